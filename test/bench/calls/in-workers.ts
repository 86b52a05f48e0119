import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { rolldown } from 'rolldown';
import type { CallsWanted } from './held-calls.js';
import type { Held } from './hold.js';

const ENTRY = 'test/bench/calls/worker.ts';

/**
 * The calls of each of these benches, shared out among so many threads; call for call what `heldCalls` gives, in
 * the same order. To be started from the root of the project, where the rule base is read. `entry` is worker.ts.
 */
export async function heldInWorkers(
  wanted: readonly CallsWanted[],
  threads = 2,
  entry = ENTRY,
): Promise<readonly (readonly Held[])[]> {
  const folder = await mkdtemp(join(tmpdir(), 'whydark-bench-'));
  try {
    const script = await bundled(entry, folder);
    const shares = await Promise.all(
      Array.from({ length: threads }, (_, from) =>
        answerOf(
          script,
          wanted.map((one) => ({ ...one, from, every: threads })),
        ),
      ),
    );
    return wanted.map((_, at) => inTurn(shares.map((share) => share[at] ?? [])));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function bundled(entry: string, folder: string): Promise<string> {
  const file = join(folder, 'worker.mjs');
  const bundle = await rolldown({
    input: entry,
    platform: 'node',
    resolve: { extensionAlias: { '.js': ['.ts', '.js'] } },
  });
  await bundle.write({ file, format: 'esm' });
  await bundle.close();
  return file;
}

function answerOf(script: string, wanted: readonly CallsWanted[]): Promise<readonly (readonly Held[])[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(script, { workerData: wanted });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`a worker ended with ${code} and said nothing`)));
  });
}

/** One call of each share in turn; the lines of a call, one a policy, stand together. */
function inTurn(shares: readonly (readonly Held[])[]): readonly Held[] {
  const lines = new Set(shares.flat().map(({ policy }) => policy)).size;
  const calls = Math.max(...shares.map((share) => share.length)) / Math.max(1, lines);
  return Array.from({ length: calls }, (_, call) =>
    shares.flatMap((share) => share.slice(call * lines, (call + 1) * lines)),
  ).flat();
}
