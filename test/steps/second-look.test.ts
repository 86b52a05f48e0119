import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RuleBase } from '../../src/rulebase/records.js';
import { nextStep } from '../../src/steps/next-step.js';
import { secondLook } from '../../src/steps/second-look.js';
import { cause, finding, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

/** One answer tells two causes apart; the remedy of either is long. */
const rules: RuleBase = ruleBase({
  questions: [question('light', { answer: oneOf('lit', 'dark') })],
  findings: [finding('by-light', 'light', { lit: 0.5, dark: 0.5 })],
  causes: [
    cause('supply', { signs: { 'by-light': { dark: 'always' } }, prior: 50 }),
    cause('account', { signs: { 'by-light': { lit: 'always' } }, prior: 50 }),
  ],
  remedies: [remedy('supply', { minutes: 60 }), remedy('account', { minutes: 60 })],
});

/** What is left costs as much as it is unlikely that the leading cause is the one. */
const hangsOnTheLeader = (weights: ArrayLike<number>): number => {
  const all = Array.from(weights);
  return 200 * (all.reduce((sum, one) => sum + one, 0) - Math.max(...all));
};

describe('a second look at one answer', () => {
  it('is asked for before something long is done on the strength of it', async () => {
    const step = nextStep(await situationAfter(rules, { light: 'dark' }));
    expect(step).toEqual({ kind: 'read-back', question: 'light', finding: 'by-light', because: 'weight' });
  });

  it('is not asked for where little hangs on it', async () => {
    const quick = {
      ...rules,
      remedies: [remedy('supply', { minutes: 1 }), remedy('account', { minutes: 1 })],
    };
    expect(nextStep(await situationAfter(quick, { light: 'dark' }))).toMatchObject({ kind: 'try' });
  });

  it('is not asked for twice, nor of what was agreed, pasted or read', async () => {
    const revised = await situationAfter(rules, { light: 'dark' }, { revised: new Set(['light']) });
    const left = await situationAfter(rules, { light: 'dark' }, { left: new Set(['read-back:light']) });
    expect(nextStep(revised)).toMatchObject({ kind: 'try' });
    expect(nextStep(left)).toMatchObject({ kind: 'try' });
    for (const origin of ['agreed', 'pasted', 'read'] as const) {
      const sure = await situationAfter(rules, { light: 'dark' }, {}, origin);
      expect(secondLook(sure, hangsOnTheLeader)).toBeUndefined();
    }
  });

  it('keeps the whole of the probability: what it shows is certain to be one of the values', async () => {
    const situation = await situationAfter(rules, { light: 'dark' });
    const look = secondLook(situation, (weights) => Array.from(weights).reduce((sum, one) => sum + one, 0));
    // Its own half a minute and a cost of one whatever comes out.
    expect(look?.expected).toBeCloseTo(0.5 + 1, 10);
  });

  it('is worth what Bayes makes of it, worked out by hand', async () => {
    // Priors and signs unlike each other: where they mirror, mistakes cancel out.
    const uneven = {
      ...rules,
      causes: [
        cause('account', { signs: { 'by-light': { dark: 'seldom' } }, prior: 70 }),
        cause('supply', { signs: { 'by-light': { dark: 'mostly' } }, prior: 30 }),
      ],
    };
    const situation = await situationAfter(uneven, { light: 'dark' });
    const look = secondLook(situation, hangsOnTheLeader);
    const rate = rules.manifest.reliability.said.choice;
    const dark = situation.model.findings.get('by-light')?.shares[1] ?? [];
    const joint = situation.model.hypotheses.map(({ prior }, h) => ({
      right: prior * (dark[h] ?? 0) * (1 - rate),
      wrong: prior * (1 - (dark[h] ?? 0)) * rate,
    }));
    const heard = joint.reduce((sum, { right, wrong }) => sum + right + wrong, 0);
    const spent = (which: 'right' | 'wrong') => hangsOnTheLeader(joint.map((one) => one[which] / heard));
    expect(look?.expected).toBeCloseTo(0.5 + spent('right') + spent('wrong'), 8);
  });

  it('never costs more in the end than its own half a minute', async () => {
    await fc.assert(
      fc.asyncProperty(fc.double({ min: 1, max: 400, noNaN: true }), async (dear) => {
        const situation = await situationAfter(rules, { light: 'dark' });
        const cost = (weights: ArrayLike<number>) => (hangsOnTheLeader(weights) / 200) * dear;
        const now = cost(situation.probabilities);
        expect(secondLook(situation, cost)?.expected ?? 0).toBeLessThanOrEqual(now + 0.5 + 1e-9);
      }),
      { numRuns: 50 },
    );
  });
});
