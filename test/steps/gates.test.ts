import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RawAnswer } from '../../src/answers/answer.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { nextStep } from '../../src/steps/next-step.js';
import { openRemedies } from '../../src/steps/open-remedies.js';
import { repairOrder, visitOrder } from '../../src/steps/orders.js';
import { cause, finding, is, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const why = 'An alarm may hang on the line.';
const rules: RuleBase = ruleBase({
  questions: [
    question('alarm', { answer: oneOf('none', 'some') }),
    question('agreed', { minutes: 3, when: is('alarm', 'some') }),
    question('page', { answer: oneOf('opens', 'does-not') }),
  ],
  findings: [finding('local', 'page', { opens: 0.5, 'does-not': 0.5 })],
  causes: [
    cause('router', { prior: 80, signs: { local: { opens: 'seldom' } } }),
    cause('lead', { prior: 10, signs: { local: { opens: 'mostly' } } }),
  ],
  remedies: [
    remedy('router', {
      minutes: 1,
      gate: { condition: { any: [is('alarm', 'none'), is('agreed', true)] }, why },
    }),
    remedy('lead', { minutes: 60 }),
  ],
});
const SHUT: readonly Readonly<Record<string, RawAnswer>>[] = [
  { alarm: 'some', agreed: false },
  { alarm: 'some', agreed: null },
  { alarm: null },
];

describe('a shut gate', () => {
  test('is never passed, whatever the remedy would save', async () => {
    const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });
    const page = fc.constantFrom<RawAnswer | undefined>(undefined, 'opens', 'does-not', null);
    await fc.assert(
      fc.asyncProperty(chances, page, fc.constantFrom(...SHUT), async (probabilities, local, shut) => {
        const raw = { ...shut, ...(local === undefined ? {} : { page: local }) };
        const situation = await situationAfter(rules, raw, { probabilities });
        const step = nextStep(situation);
        if (step.kind === 'try') expect(step.plan).not.toContain('router');
        if (step.kind === 'ask') expect(step.purpose).not.toEqual({ kind: 'gate', remedy: 'router' });
        const named = [...repairOrder(situation).remedies, ...visitOrder(situation)].map(({ id }) => id);
        expect(named).not.toContain('router');
      }),
      { numRuns: 150 },
    );
  });

  test.each(SHUT)('%j leaves the other remedies', async (raw) => {
    const open = openRemedies(await situationAfter(rules, raw));
    expect(open.map(({ remedy: { id } }) => id)).toEqual(['lead']);
  });
});

describe('a remedy of which nobody could tell whether it makes sense', () => {
  const sensible: RuleBase = {
    ...rules,
    remedies: [remedy('lead', { minutes: 60, when: is('page', 'opens') })],
  };

  test('is not tried on the call, and is left to whoever goes', async () => {
    const situation = await situationAfter(sensible, { page: null });
    expect(openRemedies(situation)).toEqual([]);
    expect(visitOrder(situation).map(({ id }) => id)).toEqual(['lead']);
  });

  test('is done by nobody once it is known to make none', async () => {
    expect(visitOrder(await situationAfter(sensible, { page: 'does-not' }))).toEqual([]);
  });
});

describe('a gate that nobody has asked about', () => {
  test('has its question put first', async () => {
    const step = nextStep(await situationAfter(rules, { page: 'does-not' }));
    expect(step).toMatchObject({
      kind: 'ask',
      question: 'alarm',
      purpose: { kind: 'gate', remedy: 'router' },
    });
  });

  test('goes on to the next question that can open it', async () => {
    const step = nextStep(await situationAfter(rules, { page: 'does-not', alarm: 'some' }));
    expect(step).toMatchObject({ kind: 'ask', question: 'agreed', group: ['agreed'] });
  });

  test('counts the minutes of its questions', async () => {
    const [lead, router] = openRemedies(await situationAfter(rules, { alarm: 'some' }));
    expect(lead).toMatchObject({ gate: [], attempt: { minutes: 60 } });
    expect(router?.gate.map(({ id }) => id)).toEqual(['agreed']);
    expect(router?.attempt.minutes).toBe(1 + 3);
  });
});

test.each([{ alarm: 'none' }, { alarm: 'some', agreed: true }])(
  'an open gate %j lets the remedy through',
  async (raw) => {
    const situation = await situationAfter(rules, { page: 'does-not', ...raw });
    expect(nextStep(situation)).toMatchObject({ kind: 'try', remedy: 'router' });
  },
);

test('a gate that two answers must open is not asked about once one of them can’t be told', async () => {
  const both: RuleBase = {
    ...rules,
    remedies: [
      remedy('router', {
        minutes: 1,
        gate: { condition: { all: [is('alarm', 'none'), is('page', 'opens')] }, why },
      }),
    ],
  };
  expect(openRemedies(await situationAfter(both, { alarm: null }))).toEqual([]);
  expect(openRemedies(await situationAfter(both)).map(({ gate }) => gate.map(({ id }) => id))).toEqual([
    ['alarm', 'page'],
  ]);
});
