import { type ChildProcessByStdio, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { build } from 'rolldown';

type Running = ChildProcessByStdio<Writable, Readable, null>;

/** A script in a process of its own, with the lines that it prints. */
export interface Child {
  readonly process: Running;
  readonly lines: AsyncIterator<string>;
  readonly ended: Promise<unknown>;
}

/** Bundles a script of `children/` so that plain node can run it; gives the path of the bundle. */
export async function bundled(name: string, folder: string): Promise<string> {
  const file = join(folder, `${name}.mjs`);
  await build({
    input: join(import.meta.dirname, 'children', `${name}.ts`),
    platform: 'node',
    logLevel: 'warn',
    resolve: { extensionAlias: { '.js': ['.ts', '.js'] } },
    output: { file, format: 'esm', codeSplitting: false },
  });
  return file;
}

export function start(script: string, ...words: string[]): Child {
  const running = spawn(process.execPath, [script, ...words], { stdio: ['pipe', 'pipe', 'inherit'] });
  const lines = createInterface({ input: running.stdout })[Symbol.asyncIterator]();
  return { process: running, lines, ended: once(running, 'exit') };
}
