import { describe, expect, it } from 'vitest';
import { diagnosisOf } from '../../src/call/call.js';
import { playScript } from '../../src/call/scripted-call.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { damaged } from './damage.js';
import { type Placed, rankOf } from './rank-of.js';
import { type Case, readCases, readHoldOut } from './read-cases.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const cases = readCases(rules);
const DRAWS = 20;

interface Judged extends Case {
  readonly clean: Placed;
  /** One for each seeded draw of a wrong answer and a third missing. */
  readonly damagedRanks: readonly number[];
}

async function judge(list: readonly Case[]): Promise<readonly Judged[]> {
  const judged: Judged[] = [];
  for (const [at, one] of list.entries()) {
    const clean = await rankOf(rules, one.cause, one.script.answers);
    const damagedRanks: number[] = [];
    for (let draw = 0; draw < DRAWS; draw++) {
      const answers = damaged(rules, one.script.answers, at * DRAWS + draw + 1);
      damagedRanks.push((await rankOf(rules, one.cause, answers)).rank);
    }
    judged.push({ ...one, clean, damagedRanks });
  }
  return judged;
}

const judged = await judge(cases);
const heldOut = await judge(readHoldOut(rules));

/** How often each cause is what is wrong; its cases share that among them. */
function weightOf({ cause }: Case): number {
  const prior = rules.causes.find(({ id }) => id === cause)?.prior ?? 0;
  return prior / cases.filter((one) => one.cause === cause).length;
}

type Share = (one: Judged) => number;
function mean(list: readonly Judged[], share: Share, weight: (one: Case) => number = even): number {
  const all = list.reduce((sum, one) => sum + weight(one), 0);
  return list.reduce((sum, one) => sum + share(one) * weight(one), 0) / all;
}
const within =
  (places: number): Share =>
  ({ clean }) =>
    clean.rank <= places ? 1 : 0;
const damagedWithin =
  (places: number): Share =>
  ({ damagedRanks }) =>
    damagedRanks.filter((rank) => rank <= places).length / DRAWS;
function even(): number {
  return 1;
}
const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
const both = (share: Share) =>
  `${percent(mean(judged, share, weightOf))} weighted, ${percent(mean(judged, share))} unweighted`;

function worst(): readonly string[] {
  const badness = ({ clean, damagedRanks }: Judged) =>
    clean.rank * 100 + damagedRanks.reduce((sum, rank) => sum + rank, 0) / DRAWS;
  return [...judged]
    .sort((a, b) => badness(b) - badness(a))
    .slice(0, 10)
    .map(({ name, cause, clean, damagedRanks }) => {
      const third = damagedRanks.filter((rank) => rank <= 3).length;
      return `  ${name}: ${cause} at place ${clean.rank}${clean.rank > 1 ? ` behind ${clean.leader}` : ''}; damaged in the first three ${third} of ${DRAWS}`;
    });
}

process.stderr.write(
  `${[
    `\n${cases.length} cases: right cause first ${both(within(1))}`,
    `in the first three ${both(within(3))}`,
    `with one answer wrong and a third missing in the first three ${both(damagedWithin(3))}`,
    `${heldOut.length} held out, drawn by frequency: first ${percent(mean(heldOut, within(1)))}, first three ${percent(mean(heldOut, within(3)))}, damaged ${percent(mean(heldOut, damagedWithin(3)))}`,
    'the ten worst:',
    ...worst(),
  ].join('\n')}\n`,
);

describe('cases written by somebody who has not read the rule base', () => {
  it('name causes that are there', () => {
    const known = new Set(rules.causes.map(({ id }) => id));
    const named = cases.flatMap(({ cause, looksLike }) =>
      looksLike === undefined ? [cause] : [cause, looksLike],
    );
    expect(named.filter((id) => !known.has(id))).toEqual([]);
  });

  it.each([
    ['by frequency', weightOf],
    ['each alike', even],
  ] as const)(
    'counted %s: the right cause first in 95 %, in the first three in 99 %, in 88 % of damaged ones',
    (_, weight) => {
      expect(mean(judged, within(1), weight)).toBeGreaterThanOrEqual(0.95);
      expect(mean(judged, within(3), weight)).toBeGreaterThanOrEqual(0.99);
      // One answer wrong and a third missing.
      expect(mean(judged, damagedWithin(3), weight)).toBeGreaterThanOrEqual(0.88);
    },
  );

  it('leave it in the first three where the rule base was never mended by them', () => {
    expect(mean(heldOut, within(3))).toBeGreaterThanOrEqual(0.99);
    expect(mean(heldOut, damagedWithin(3))).toBeGreaterThanOrEqual(0.88);
    expect(mean(heldOut, within(1))).toBeGreaterThanOrEqual(0.8);
  });

  it('are two hundred and fifty at least, two for each cause', () => {
    expect(cases.length).toBeGreaterThanOrEqual(250);
    const files = new Map<string, number>();
    for (const { name } of cases) {
      const file = name.split(' ')[0] ?? '';
      files.set(file, (files.get(file) ?? 0) + 1);
    }
    const poor = rules.causes.filter(({ id, stage }) => (files.get(`${stage}/${id}`) ?? 0) < 2);
    expect(poor.map(({ id }) => id)).toEqual([]);
  });

  const kinds = new Map<string, string>();

  it.each(cases.map((one) => [one.name, one] as const))(
    '%s: the call ends within eighty events',
    async (name, { script }) => {
      const { call, events } = await playScript(rules, digest, script, 'case');
      const { verdict } = diagnosisOf(call);
      kinds.set(name, verdict.kind);
      expect(events.length).toBeLessThan(80);
      expect(['restored', 'named', 'open', 'other', 'nothing']).toContain(verdict.kind);
    },
  );

  it('bring the picture back in at least nine calls of ten that hands on the call could mend', () => {
    const mendable = cases.filter(({ script: { role, remedies } }) =>
      rules.remedies.some(
        ({ id, who }) => remedies[id]?.picture === 'yes' && (role === 'site' || who !== 'installer'),
      ),
    );
    const back = mendable.filter(({ name }) => kinds.get(name) === 'restored');
    expect(back.length / mendable.length).toBeGreaterThanOrEqual(0.9);
  });
});
