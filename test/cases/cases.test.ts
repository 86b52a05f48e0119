import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { diagnosisOf, replay } from '../../src/call/call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT } from '../../src/call/events.js';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { VERSION } from '../../src/call/version.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';

interface Case extends Omit<Script, 'title' | 'opened'> {
  readonly cause: string;
}

const OPENED = '2026-11-25T09:00:00.000Z';
const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;

const cases = readdirSync('test/cases', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => readdirSync(join('test/cases', name)).map((file) => join('test/cases', name, file)))
  .map((path): readonly [string, Case] => [path, JSON.parse(readFileSync(path, 'utf8'))])
  .sort(([a], [b]) => (a < b ? -1 : 1));

/** The place of the right cause in the ranking when the caller has answered everything. */
async function rankOf({ cause, role, answers }: Case): Promise<number> {
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id: 'case',
    opened: OPENED,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role,
  };
  const events = Object.entries(answers).map(
    ([question, answer]): CallEvent => ({ at: OPENED, type: 'answered', question, answer, origin: 'said' }),
  );
  const result = await replay(rules, digest, header, events, { opening: 'skipped' });
  if (!result.ok) throw new Error(result.problem.id);
  const { probabilities, model } = result.value.situation;
  const own = probabilities[model.hypotheses.findIndex(({ id }) => id === cause)] ?? 0;
  return probabilities.filter((p) => p > own).length + 1;
}

describe('cases written by somebody who has not read the rule base', () => {
  it('has one for nearly every cause', () => {
    const covered = new Set(cases.map(([, { cause }]) => cause));
    expect(cases.length).toBeGreaterThanOrEqual(40);
    expect([...covered].filter((id) => !rules.causes.some((cause) => cause.id === id))).toEqual([]);
  });

  it.each(cases)('%s: the right cause is among the first three', async (_, one) => {
    expect(await rankOf(one)).toBeLessThanOrEqual(3);
  });

  it('puts the right cause first in at least 36 of 40', async () => {
    const ranks = await Promise.all(cases.map(async ([path, one]) => ({ path, rank: await rankOf(one) })));
    const first = ranks.filter(({ rank }) => rank === 1).length;
    expect(
      first / ranks.length,
      ranks
        .filter(({ rank }) => rank > 1)
        .map(({ path }) => path)
        .join(', '),
    ).toBeGreaterThanOrEqual(0.9);
  });

  it.each(cases)('%s: the call ends within eighty events', async (path, one) => {
    const { call, events } = await playScript(rules, digest, { ...one, title: path, opened: OPENED }, 'case');
    const { verdict } = diagnosisOf(call);
    expect(events.length).toBeLessThan(80);
    expect(['restored', 'named', 'open', 'other', 'nothing']).toContain(verdict.kind);
  });

  it('brings the picture back in at least 36 of 40 calls', async () => {
    const kinds = await Promise.all(
      cases.map(async ([path, one]) => {
        const { call } = await playScript(rules, digest, { ...one, title: path, opened: OPENED }, 'case');
        return diagnosisOf(call).verdict.kind;
      }),
    );
    expect(kinds.filter((kind) => kind === 'restored').length / kinds.length).toBeGreaterThanOrEqual(0.9);
  });
});
