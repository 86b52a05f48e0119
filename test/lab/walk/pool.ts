import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface, type Interface } from 'node:readline';
import type { Seen } from './judge.js';
import { type Network, requestOf } from './network.js';

export interface Answer {
  /** What `ip` refused, by device. */
  readonly refused: Readonly<Record<string, readonly string[]>>;
  readonly probes: readonly Seen[];
}

/** From the root of the project, where tests are run. */
const HELPER = 'test/lab/walk/kernel.py';

/** One pool of namespaces. They have no name: the process holds them, so they end with it, also after a crash. */
export class Pool {
  readonly #child: ChildProcess;
  readonly #lines: AsyncIterator<string>;
  readonly #reader: Interface;
  #said = '';

  private constructor() {
    this.#child = spawn('/usr/bin/python3', ['-B', HELPER], { stdio: ['pipe', 'pipe', 'pipe'] });
    if (!this.#child.stdout || !this.#child.stderr) throw new Error('no pipe to the helper');
    this.#child.stderr.on('data', (data) => {
      this.#said += data;
    });
    this.#reader = createInterface({ input: this.#child.stdout });
    this.#lines = this.#reader[Symbol.asyncIterator]();
  }

  /** Builds a pool; throws with what the helper said when it can't. */
  static async open(): Promise<Pool> {
    const pool = new Pool();
    await pool.#next();
    return pool;
  }

  /** Re-addresses the pool and tries the network's pings; `isSlow` waits longer, for a loaded machine. */
  async ask(network: Network, isSlow = false): Promise<Answer> {
    this.#child.stdin?.write(`${JSON.stringify(requestOf(network, isSlow))}\n`);
    return JSON.parse(await this.#next());
  }

  async close(): Promise<void> {
    const ended = new Promise((done) => this.#child.once('exit', done));
    this.#child.stdin?.end();
    if (this.#child.exitCode === null) await ended;
    this.#reader.close();
  }

  async #next(): Promise<string> {
    const { value, done } = await this.#lines.next();
    if (done === true) throw new Error(`the helper ended: ${this.#said}`);
    return value;
  }
}
