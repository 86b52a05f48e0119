import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Host, Ran } from '../types.js';
import { Daemons } from './daemons.js';
import { given, must, pause } from './exec.js';
import { BASE, record, startTicks } from './manifest.js';
import { HOSTS, resolvText } from './plan.js';

/** What everything on a site stands on: its namespaces and folders, commands in them, its programs. */
export class Ground {
  protected readonly folder: string;
  protected readonly daemons: Daemons;
  protected undo: (() => Promise<void>)[] = [];
  protected log: Ran[] = [];
  protected built = false;

  constructor(readonly id: string) {
    this.folder = join(BASE, id);
    this.daemons = new Daemons(
      this.folder,
      (host) => this.namespace(host),
      () => this.record(),
    );
  }

  protected namespace(host: Host): string {
    return `${this.id}-${host}`;
  }

  protected home(host: Host): string {
    return join(this.folder, host);
  }

  protected manifest() {
    return {
      id: this.id,
      owner: { pid: process.pid, ticks: startTicks(process.pid) },
      namespaces: HOSTS.map((host) => this.namespace(host)),
      processes: this.daemons.known(),
    };
  }

  protected record(): void {
    if (this.built) record(this.manifest());
  }

  protected inside(host: Host, argv: readonly string[]): readonly string[] {
    return ['ip', 'netns', 'exec', this.namespace(host), ...argv];
  }

  /** A command of the lab itself, not of a person: not in the log. */
  protected quiet(host: Host, argv: readonly string[], timeoutMs = 8000) {
    return given(this.inside(host, argv), { timeoutMs, cwd: this.home(host) });
  }

  async run(host: Host, argv: readonly string[], options?: { readonly timeoutMs?: number }): Promise<Ran> {
    const got = await this.quiet(host, argv, options?.timeoutMs ?? 4000);
    const ran = { host, argv, ...got };
    this.log.push(ran);
    return ran;
  }

  async nft(host: Host, rules: string): Promise<void> {
    await must(this.inside(host, ['nft', '-f', '-']), { input: `${rules}\n` });
  }

  async ip(host: Host, batch: string): Promise<void> {
    await must(['ip', '-n', this.namespace(host), '-batch', '-'], { input: `${batch}\n` });
  }

  daemon(key: string, host: Host, argv: readonly string[], env: Readonly<Record<string, string>> = {}): void {
    this.daemons.start(key, { host, argv, env });
  }

  async stop(key: string): Promise<void> {
    await this.daemons.stop(key);
  }

  async listening(host: Host, port: number): Promise<void> {
    for (let round = 0; round < 120; round++) {
      const seen = await this.quiet(host, ['ss', '-Htuln', `sport = :${port}`]);
      if (seen.stdout.trim() !== '') return;
      await pause(25);
    }
    throw new Error(`${this.namespace(host)}: nothing listens on port ${port}`);
  }

  resolv(host: Host, ...servers: readonly string[]): void {
    writeFileSync(join('/etc/netns', this.namespace(host), 'resolv.conf'), resolvText(servers));
  }

  protected status(): Record<string, unknown> {
    try {
      return JSON.parse(readFileSync(join(this.home('camera'), 'status.json'), 'utf8')) as Record<
        string,
        unknown
      >;
    } catch {
      return {};
    }
  }

  /** Waits until the camera's program takes requests; false where it doesn't within 3 s. */
  protected async ready(): Promise<boolean> {
    for (let round = 0; round < 100; round++) {
      const pid = this.daemons.pid('camera');
      if (pid !== undefined && this.status().pid === pid) return true;
      await pause(30);
    }
    return false;
  }

  async cameraFresh(): Promise<boolean> {
    const since = Number(process.hrtime.bigint()) / 1e9;
    const status = await this.tried();
    if (status.udp !== 'ok' || status.tcp !== 'ok') await this.forgotten(since);
    return status.udp === 'ok' || status.tcp === 'ok';
  }

  /** The camera's state after an attempt begun now; empty where its program does not react within 5 s. */
  private async tried(): Promise<Record<string, unknown>> {
    if (!this.daemons.runs('camera') || !(await this.ready())) return {};
    const token = randomBytes(6).toString('hex');
    writeFileSync(join(this.home('camera'), 'fresh'), token);
    const pid = this.daemons.pid('camera');
    if (pid === undefined) return {};
    process.kill(pid, 'SIGUSR1');
    for (let round = 0; round < 160; round++) {
      const status = this.status();
      if (status.token === token) return status;
      await pause(30);
    }
    return {};
  }

  /** Lets the service give up what it has not heard since (monotonic seconds), as it would a few seconds later. */
  private async forgotten(since: number): Promise<void> {
    const pid = this.daemons.pid('service');
    const ready = join(this.home('service'), 'ready');
    if (pid === undefined || !existsSync(ready) || readFileSync(ready, 'utf8') !== `${pid}`) return;
    writeFileSync(join(this.home('service'), 'forget'), `${since}`);
    process.kill(pid, 'SIGUSR1');
    await pause(60);
  }

  defer(undo: () => Promise<void>): void {
    this.undo.push(undo);
  }

  takeLog(): readonly Ran[] {
    const log = this.log;
    this.log = [];
    return log;
  }
}
