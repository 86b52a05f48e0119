import { spawn } from 'node:child_process';
import { closeSync, openSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Host } from '../types.js';
import { killGroup, pause } from './exec.js';
import { type Known, startTicks } from './manifest.js';

type Settings = Readonly<Record<string, string>>;

/** What a key was last started with. */
export interface Start {
  readonly host: Host;
  readonly argv: readonly string[];
  readonly env: Settings;
}

interface Running {
  readonly known: Known;
  readonly ended: Promise<void>;
}

/** Seconds a daemon lives at most, whatever becomes of its lab. */
const LIFE = 1200;

/** The processes of a lab by key. Each writes `KEY.pid` and `KEY.log` into its host's folder. */
export class Daemons {
  private readonly running = new Map<string, Running>();
  readonly last = new Map<string, Start>();

  constructor(
    private readonly folder: string,
    private readonly namespace: (host: Host) => string,
    private readonly changed: () => void,
  ) {}

  known(): readonly Known[] {
    return [...this.running.values()].map((one) => one.known);
  }

  keys(): readonly string[] {
    return [...this.running.keys()];
  }

  runs(key: string): boolean {
    return this.running.has(key);
  }

  /** The process itself (not what limits its life), or undefined before it has started. */
  pid(key: string): number | undefined {
    const start = this.last.get(key);
    if (start === undefined || !this.running.has(key)) return undefined;
    try {
      const pid = Number(readFileSync(join(this.folder, start.host, `${key}.pid`), 'utf8'));
      return pid > 1 ? pid : undefined;
    } catch {
      return undefined;
    }
  }

  start(key: string, start: Start): void {
    if (this.running.has(key)) throw new Error(`${key} runs already`);
    const home = join(this.folder, start.host);
    rmSync(join(home, `${key}.pid`), { force: true });
    const log = openSync(join(home, `${key}.log`), 'a');
    const env = Object.entries(start.env).map(([name, value]) => `${name}=${value}`);
    const child = spawn(
      'ip',
      [
        ...['netns', 'exec', this.namespace(start.host), 'timeout', '--foreground', '-k', '1', `${LIFE}`],
        ...['sh', '-c', 'echo $$ >"$0.pid"; exec env "$@"', join(home, key), ...env, ...start.argv],
      ],
      { cwd: home, detached: true, stdio: ['ignore', log, log] },
    );
    closeSync(log);
    this.last.set(key, start);
    const pid = child.pid;
    if (pid === undefined) throw new Error(`${key} did not start`);
    const mine: Running = {
      known: { pid, ticks: startTicks(pid) },
      ended: new Promise((resolve) => {
        child.on('exit', () => {
          killGroup(pid, 'SIGKILL');
          if (this.running.get(key) === mine) this.running.delete(key);
          resolve();
        });
      }),
    };
    this.running.set(key, mine);
    child.unref();
    this.changed();
  }

  /** Ends a process and waits until it has; one that has ended is no error. */
  async stop(key: string): Promise<void> {
    const one = this.running.get(key);
    if (one === undefined) return;
    killGroup(one.known.pid, 'SIGKILL');
    await Promise.race([one.ended, pause(2000)]);
    this.running.delete(key);
    this.changed();
  }

  /** Ends it where it runs and starts it as it was last started. */
  async again(key: string): Promise<void> {
    await this.stop(key);
    const start = this.last.get(key);
    if (start !== undefined) this.start(key, start);
  }
}
