import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import type { LoadedRules } from '../../src/files/load-rules.js';

/** The command as it was built. */
export const COMMAND = 'dist/whydark.js';

export interface Run {
  readonly input?: string;
  readonly env?: NodeJS.ProcessEnv;
  readonly command?: string;
}

/** Runs the built command without a terminal. Fails loudly where it hangs. */
export function run(
  words: readonly string[],
  { input, env = {}, command = COMMAND }: Run = {},
): SpawnSyncReturns<string> {
  const done = spawnSync(process.execPath, [command, ...words], {
    encoding: 'utf8',
    timeout: 20_000,
    maxBuffer: 32 * 1024 * 1024,
    env: { PATH: process.env.PATH, HOME: '/nonexistent', ...env },
    ...(input === undefined ? { stdio: ['ignore', 'pipe', 'pipe'] } : { input }),
  });
  if (done.error) throw done.error;
  return done;
}

/** The rule base that the built command brings. */
export function builtRules(): LoadedRules {
  return {
    rules: JSON.parse(readFileSync('dist/rules.json', 'utf8')),
    digest: readFileSync('dist/rules.digest', 'utf8').trim(),
  };
}

/** Holds the calls of `transcripts-demo/` under the built rule base; gives the paths of their records. */
export async function heldCalls(folder: string): Promise<readonly string[]> {
  const { rules, digest } = builtRules();
  const names = readdirSync('transcripts-demo', { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  return Promise.all(
    names.map(async ({ name }) => {
      const script: Script = JSON.parse(readFileSync(join('transcripts-demo', name, 'caller.json'), 'utf8'));
      const { header, events } = await playScript(rules, digest, script, name);
      const path = join(folder, `${name}.jsonl`);
      writeFileSync(path, [header, ...events].map((line) => `${JSON.stringify(line)}\n`).join(''));
      return path;
    }),
  );
}
