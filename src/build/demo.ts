import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { diagnosisOf, replay } from '../call/call.js';
import { playScript, type Script } from '../call/scripted-call.js';
import { ticketOf } from '../call/ticket-of.js';
import { VERSION } from '../call/version.js';
import { loadBuiltRules } from '../files/built-rules.js';
import type { LoadedRules } from '../files/load-rules.js';
import { readRecord } from '../files/record.js';
import { inWords } from '../messages/say.js';

/** What was written down before the call was run. */
interface Expected {
  readonly verdict: { readonly kind: string; readonly cause?: string };
  /** The first remedy that is tried, if any is. */
  readonly firstRemedy: string | null;
  /** Added after the call was run, where it came out otherwise for a reason that stands: what and why. */
  readonly otherwise?: {
    readonly firstRemedy: string | null;
    readonly verdict?: Expected['verdict'];
    readonly why: string;
  };
}

/** What differs in a recorded call from what was written down; nothing where all is as expected. */
export async function compareDemo(
  folder: string,
  { rules, digest }: LoadedRules,
): Promise<readonly string[]> {
  const expected: Expected = JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8'));
  const { header, events, torn } = readRecord(join(folder, 'record.jsonl'), VERSION);
  if (header.rules.digest !== digest)
    return [`the record belongs to rule base ${header.rules.digest.slice(0, 12)}`];
  const result = await replay(rules, digest, header, events);
  if (!result.ok) return [inWords(result.problem)];
  const { verdict } = diagnosisOf(result.value);
  const remedy = result.value.state.trials[0]?.remedy ?? null;
  const differences: string[] = torn ? [`line ${torn.line} of record.jsonl is cut off`] : [];
  const differ = (what: string, wanted: unknown, got: unknown): void => {
    if (wanted !== got) differences.push(`${what}: expected ${wanted}, got ${got}`);
  };
  const wanted = expected.otherwise?.verdict ?? expected.verdict;
  differ('verdict', wanted.kind, verdict.kind);
  differ('cause', wanted.cause, verdict.cause);
  differ('first remedy', (expected.otherwise ?? expected).firstRemedy, remedy);
  if (ticketOf(result.value) !== readFileSync(join(folder, 'ticket.md'), 'utf8'))
    differences.push('the ticket differs from ticket.md');
  return differences;
}

/** Holds the call again with its written-down caller; writes record and ticket, never what is expected. */
export async function renewDemo(folder: string, { rules, digest }: LoadedRules): Promise<void> {
  const script: Script = JSON.parse(readFileSync(join(folder, 'caller.json'), 'utf8'));
  const { header, events, call } = await playScript(rules, digest, script, basename(folder));
  const lines = [header, ...events].map((line) => `${JSON.stringify(line)}\n`);
  writeFileSync(join(folder, 'record.jsonl'), lines.join(''));
  writeFileSync(join(folder, 'ticket.md'), ticketOf(call));
}

async function main(argv: readonly string[]): Promise<number> {
  const { ruleBase: rules, digest } = loadBuiltRules(import.meta.url);
  const root = 'transcripts-demo';
  const folders = readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(root, entry.name, 'caller.json')))
    .map(({ name }) => join(root, name))
    .sort();
  let failed = 0;
  let others = 0;
  for (const folder of folders) {
    if (argv.includes('--renew')) await renewDemo(folder, { rules, digest });
    const differences = await compareDemo(folder, { rules, digest });
    if (differences.length > 0) failed += 1;
    const { otherwise }: Expected = JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8'));
    if (otherwise) others += 1;
    const word = differences.length > 0 ? 'differs    ' : otherwise ? 'otherwise  ' : 'as expected';
    process.stdout.write(`${word}  ${folder}\n`);
    for (const line of otherwise ? [otherwise.why, ...differences] : differences)
      process.stdout.write(`             ${line}\n`);
  }
  const good = folders.length - failed - others;
  process.stdout.write(
    `${good} of ${folders.length} calls as expected, ${others} otherwise and why, ${failed} differ\n`,
  );
  return failed > 0 ? 1 : 0;
}

if (process.argv[1]?.endsWith('demo.js')) process.exitCode = await main(process.argv.slice(2));
