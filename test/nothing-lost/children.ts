import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { rolldown } from 'rolldown';

/** The written-down callers of the recorded calls. */
export const CALLERS: readonly string[] = readdirSync('transcripts-demo', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => join('transcripts-demo', name, 'caller.json'))
  .sort();

/** A folder of its own for records, and in it the program that holds a call, bundled: Node 20 runs no TypeScript. */
export async function folderWithHolder(): Promise<{ readonly folder: string; readonly holder: string }> {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-lost-'));
  const holder = join(folder, 'held-call.mjs');
  const bundle = await rolldown({
    input: resolve('test/nothing-lost/held-call.ts'),
    platform: 'node',
    resolve: { extensionAlias: { '.js': ['.ts', '.js'] } },
  });
  await bundle.write({ file: holder, format: 'esm', codeSplitting: false });
  await bundle.close();
  return { folder, holder };
}

/** A call being held by a process of its own. */
export interface Holding {
  readonly child: ChildProcess;
  /** Lines it has said so far: each is on the disk. */
  readonly said: () => readonly string[];
  readonly ended: Promise<unknown>;
}

/** Begins to hold a call in a process of its own; `onLine` is told how many lines it has said. */
export function hold(
  holder: string,
  caller: string,
  record: string,
  id: string,
  onLine: (count: number, child: ChildProcess) => void = () => undefined,
): Holding {
  const child = spawn(process.execPath, [holder, caller, record, id], { stdio: ['ignore', 'pipe', 'pipe'] });
  let text = '';
  const lines = (): readonly string[] => text.split('\n').slice(0, -1);
  child.stdout.on('data', (chunk: Buffer) => {
    text += chunk.toString();
    onLine(lines().length, child);
  });
  return { child, said: lines, ended: once(child, 'close') };
}
