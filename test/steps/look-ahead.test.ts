import { describe, expect, test } from 'vitest';
import { combinedErrorRate } from '../../src/answers/reliability.js';
import { blur } from '../../src/ranking/blur.js';
import { posterior } from '../../src/ranking/posterior.js';
import type { PlaceId, RuleBase } from '../../src/rulebase/records.js';
import { type Candidate, candidates, round } from '../../src/steps/look-ahead.js';
import { openRemedies } from '../../src/steps/open-remedies.js';
import { passKey, type Situation } from '../../src/steps/situation.js';
import { cause, finding, is, MANIFEST, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { fewestMinutes } from './brute-force.js';
import { situationAfter } from './situations.js';

const answer = oneOf('yes', 'no');
const half = { yes: 0.5, no: 0.5 };
/** Two causes, each with its remedy, and a question that tells them apart. */
const rules: RuleBase = ruleBase({
  manifest: {
    ...MANIFEST,
    hypotheses: { otherShare: 0.04, nothing: { title: 'Nothing', prior: 1, signs: {} } },
  },
  questions: [
    question('page', { answer, minutes: 2 }),
    question('leads', { answer, place: 'cabinet', stage: 'link' }),
    question('lamp', { answer, place: 'cabinet', minutes: 1.5, when: is('leads', 'yes') }),
  ],
  findings: [finding('opens', 'page', half)],
  causes: [
    cause('here', { prior: 60, signs: { opens: { yes: 'seldom' }, lit: { yes: 'seldom' } } }),
    cause('there', {
      prior: 40,
      signs: { opens: { yes: 'always' }, lit: { yes: 'mostly' }, 'by-lead': { yes: 'always' } },
    }),
  ],
  remedies: [
    remedy('here', { minutes: 30, place: 'cabinet' }),
    remedy('there', { minutes: 25, place: 'computer' }),
  ],
});

function withFindings(...findings: RuleBase['findings']): RuleBase {
  return { ...rules, findings: [...findings].sort((a, b) => (a.id < b.id ? -1 : 1)) };
}

function candidatesIn(situation: Situation): readonly Candidate[] {
  return candidates(
    situation,
    openRemedies(situation).map(({ attempt }) => attempt),
  );
}

function best(situation: Situation, probabilities: readonly number[], from: PlaceId): number {
  const tries = openRemedies(situation).map(({ attempt }) => attempt);
  return fewestMinutes(probabilities, from, tries, situation.rules.manifest);
}

/** Σ over the values of the settled findings of the best repair after each, by brute force. */
function afterwards(
  situation: Situation,
  settles: readonly (readonly [string, number])[],
  from: PlaceId,
): number {
  let outcomes = [situation.probabilities];
  for (const [id, rate] of settles) {
    const { shares = [], values = [] } = situation.model.findings.get(id) ?? {};
    outcomes = outcomes.flatMap((p) =>
      shares.map((row) => p.map((one, h) => one * blur(row[h] ?? 0, rate, values.length))),
    );
  }
  return outcomes.reduce((sum, p) => sum + best(situation, p, from), 0);
}

describe('what a question is worth', () => {
  test('is its minutes, and what is left to do after each value or can’t tell', async () => {
    const situation = await situationAfter(rules);
    const [one, ...more] = candidatesIn(situation);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ settles: 'opens', minutes: 2 });
    const untold = best(situation, situation.probabilities, 'site');
    const told = afterwards(situation, [['opens', 0.05]], 'site');
    expect(one?.expected).toBeCloseTo(2 + 0.85 * told + 0.15 * untold, 9);
    expect(one?.expected).toBeLessThan(untold);
  });

  test('does not change what is expected of the causes before it is answered', async () => {
    const situation = await situationAfter(rules);
    const after = ['yes', 'no'].map((value) => {
      const weights = situation.model.findings.get('opens');
      const row = weights?.shares[weights.values.indexOf(value)] ?? [];
      return situation.probabilities.map((p, h) => p * blur(row[h] ?? 0, 0.05, 2));
    });
    for (const [h, p] of situation.probabilities.entries())
      expect((after[0]?.[h] ?? 0) + (after[1]?.[h] ?? 0)).toBeCloseTo(p, 12);
  });

  test('has the price of another subject, once there is one', async () => {
    const expected = async (over: Partial<Situation>): Promise<number> =>
      candidatesIn(await situationAfter(rules, {}, over))[0]?.expected ?? Number.NaN;
    const first = await expected({});
    expect(await expected({ lastStage: 'power' })).toBeCloseTo(first, 12);
    expect(await expected({ lastStage: 'sign-in' })).toBeCloseTo(first + MANIFEST.subjectPrice, 12);
  });

  test('counts the way, and where one stands afterwards', async () => {
    const there = { ...rules, questions: [question('page', { answer, minutes: 2, place: 'cabinet' })] };
    const situation = await situationAfter(there);
    const [one] = candidatesIn(situation);
    expect(one?.minutes).toBe(2 + 4);
    const told = afterwards(situation, [['opens', 0.05]], 'cabinet');
    const untold = best(situation, situation.probabilities, 'cabinet');
    expect(one?.expected).toBeCloseTo(6 + 0.85 * told + 0.15 * untold, 9);
  });
});

describe('questions that together settle a finding', () => {
  const lit = finding('lit', 'lamp', half);
  const byLead = finding('by-lead', 'leads', half);

  test('are one step: gate first, minutes and way together, told only if each is told', async () => {
    const situation = await situationAfter(withFindings(lit));
    const [one] = candidatesIn(situation);
    expect(one?.questions.map(({ id }) => id)).toEqual(['leads', 'lamp']);
    expect(one?.minutes).toBe(4 + 1 + 1.5);
    const told = afterwards(situation, [['lit', 0.05]], 'cabinet');
    const untold = best(situation, situation.probabilities, 'cabinet');
    expect(one?.expected).toBeCloseTo(6.5 + 0.85 ** 2 * told + (1 - 0.85 ** 2) * untold, 9);
  });

  test('also settle what their gate settles by itself', async () => {
    const situation = await situationAfter(withFindings(lit, byLead));
    const both = candidatesIn(situation).find(({ settles }) => settles === 'lit');
    const told = afterwards(
      situation,
      [
        ['lit', 0.05],
        ['by-lead', 0.05],
      ],
      'cabinet',
    );
    const untold = best(situation, situation.probabilities, 'cabinet');
    expect(both?.expected).toBeCloseTo(6.5 + 0.85 ** 2 * told + (1 - 0.85 ** 2) * untold, 9);
    expect(
      candidatesIn(situation)
        .map(({ settles }) => settles)
        .sort(),
    ).toEqual(['by-lead', 'lit']);
  });

  test('are not two observations where two findings read one answer, or repeat each other', async () => {
    // Signs so weak that a second observation would turn the choice round.
    const sign = (word: string) => ({ opens: { yes: word }, 'opens-too': { yes: word } });
    const causes = [
      cause('here', { prior: 60, signs: sign('sometimes') }),
      cause('there', { prior: 40, signs: sign('mostly') }),
    ];
    const again = finding('opens-too', 'page', half);
    const [alone] = candidatesIn(await situationAfter({ ...rules, causes }));
    const twice = candidatesIn(await situationAfter({ ...withFindings(...rules.findings, again), causes }));
    expect(twice.map(({ settles }) => settles)).toEqual(['opens']);
    expect(twice[0]?.expected).toBeCloseTo(alone?.expected ?? Number.NaN, 12);
    const repeat = { ...byLead, repeats: { finding: 'lit', agrees: {} } };
    const two = candidatesIn(await situationAfter(withFindings(lit, repeat)));
    const single = candidatesIn(await situationAfter(withFindings(lit)));
    expect(two.find(({ settles }) => settles === 'lit')?.expected).toBeCloseTo(single[0]?.expected ?? 0, 12);
  });

  test('lean on answers already given as these were given', async () => {
    const rested = finding('rested', 'page', half, {
      asks: ['page', 'leads'],
      rules: [{ value: 'yes', conditions: { all: [is('page', 'yes'), is('leads', 'yes')] } }],
    });
    const signs = { rested: { yes: 'seldom' } };
    const base = {
      ...withFindings(rested),
      causes: [cause('here', { prior: 60, signs }), cause('there', { prior: 40 })],
    };
    for (const [origin, rate] of [
      ['said', 0.05],
      ['read', 0.002],
    ] as const) {
      const situation = await situationAfter(base, { leads: 'yes' }, {}, origin);
      const [one] = candidatesIn(situation);
      const e = combinedErrorRate([{ rate: 0.05 }, { rate }]);
      const untold = best(situation, situation.probabilities, 'site');
      expect(one?.expected).toBeCloseTo(
        2 + 0.85 * afterwards(situation, [['rested', e]], 'site') + 0.15 * untold,
        9,
      );
    }
  });
});

describe('no candidate', () => {
  const early = finding('opens', 'page', half, { asks: ['page', 'leads'] });
  test.each<[string, Parameters<typeof situationAfter>]>([
    ['what is known', [rules, { page: 'yes' }]],
    [
      'what is known and was spent on a cause that is mended',
      [withFindings(early), { page: 'yes' }, { evidence: [] }],
    ],
    ['what the caller can’t tell', [rules, { page: null }]],
    ['what the person asked to leave', [rules, {}, { passed: new Set([passKey('ask', 'page')]) }]],
    [
      'what repeats something known',
      [
        withFindings(
          finding('lit', 'leads', half),
          finding('opens', 'page', half, { repeats: { finding: 'lit', agrees: {} } }),
        ),
        { leads: 'yes' },
      ],
    ],
  ])('is %s', async (_, given) => {
    expect(candidatesIn(await situationAfter(...given))).toEqual([]);
  });
});

test('candidates come best first, ties by finding after rounding', async () => {
  const sameQuestions = ['p1', 'p2', 'p3'].map((id) =>
    question(id, { answer, minutes: id === 'p2' ? 1 : 2 }),
  );
  const sign = { yes: 'seldom' };
  const base: RuleBase = {
    ...rules,
    questions: sameQuestions,
    findings: ['a', 'b', 'c'].map((id, i) => finding(id, `p${3 - i}`, half)),
    causes: [
      cause('here', { prior: 60, signs: { a: sign, b: sign, c: sign } }),
      cause('there', { prior: 40 }),
    ],
  };
  const found = candidatesIn(await situationAfter(base));
  expect(found.map(({ settles }) => settles)).toEqual(['b', 'a', 'c']);
  expect(round(0.0004)).toBe(0);
  expect(round(0.1 + 0.2)).toBe(0.3);
});

test('nothing of the look-ahead moves the ranking', async () => {
  const situation = await situationAfter(rules);
  const before = [...situation.probabilities];
  candidatesIn(situation);
  expect(situation.probabilities).toEqual(before);
  expect(posterior(situation.model, situation.evidence)).toEqual(before);
});
