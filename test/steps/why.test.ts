import { describe, expect, test } from 'vitest';
import { posterior } from '../../src/ranking/posterior.js';
import { whyAsk } from '../../src/steps/why.js';
import { cause, finding, oneOf, question, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const rules = ruleBase({
  questions: [
    question('page', { answer: oneOf('yes', 'no') }),
    question('light', { answer: oneOf('yes', 'no') }),
  ],
  findings: [finding('opens', 'page', { yes: 0.6, no: 0.4 }), finding('lit', 'light', { yes: 0.5, no: 0.5 })],
  causes: [
    cause('supply', { prior: 40, signs: { opens: { yes: 'seldom' }, lit: { yes: 'seldom' } } }),
    cause('mast', { prior: 30, signs: { opens: { yes: 'sometimes' } } }),
    // Told apart best of all, and hardly ever the cause.
    cause('moth', { prior: 3, signs: { opens: { no: 'always' } } }),
    cause('account', { prior: 30, signs: { opens: { yes: 'always' } } }),
  ],
});

describe('why a finding is asked about', () => {
  test('are the two likely causes that it separates most', async () => {
    const why = whyAsk(await situationAfter(rules), 'opens');
    expect([why?.first.id, why?.second.id]).toEqual(['supply', 'account']);
  });

  test('gives each cause as it stands, and as it will stand after each value, likeliest first', async () => {
    const situation = await situationAfter(rules, { light: 'yes' });
    const why = whyAsk(situation, 'opens');
    const at = (id: string | undefined): number =>
      situation.model.hypotheses.findIndex((one) => one.id === id);
    expect(why?.first.now).toBe(situation.probabilities[at(why?.first.id)]);
    expect(why?.effects.map(({ value }) => value).sort()).toEqual(['no', 'yes']);
    for (const { value, first, second } of why?.effects ?? []) {
      // One answer said by voice, as it will be counted when it comes.
      const after = posterior(situation.model, [
        ...situation.evidence,
        { finding: 'opens', value, errorRate: 0.05 },
      ]);
      expect(first).toBeCloseTo(after[at(why?.first.id)] ?? Number.NaN, 12);
      expect(second).toBeCloseTo(after[at(why?.second.id)] ?? Number.NaN, 12);
    }
  });

  test('is nothing for a finding that is not there', async () => {
    expect(whyAsk(await situationAfter(rules), 'stranger')).toBeUndefined();
  });
});
