import { describe, expect, test } from 'vitest';
import { nextStep } from '../../src/steps/next-step.js';
import { openRemedies } from '../../src/steps/open-remedies.js';
import { cause, finding, MANIFEST, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

/** One of two is wrong; a question of three minutes tells which, and either is tried in four. */
const parts = {
  questions: [question('mark', { answer: oneOf('left', 'right'), minutes: 3 })],
  findings: [finding('marked', 'mark', { left: 0.5, right: 0.5 })],
  causes: [
    cause('lead', { signs: { marked: { left: 'always' } } }),
    cause('plug', { signs: { marked: { right: 'always' } } }),
  ],
  remedies: [remedy('lead', { minutes: 4 }), remedy('plug', { minutes: 4 })],
};

describe('the price of a try', () => {
  test('is added to the minutes of whatever is tried', async () => {
    const priced = ruleBase({ ...parts, manifest: { ...MANIFEST, tryPrice: 4 } });
    const minutes = openRemedies(await situationAfter(priced)).map(({ attempt }) => attempt.minutes);
    expect(minutes).toEqual([8, 8]);
    const free = openRemedies(await situationAfter(ruleBase(parts))).map(({ attempt }) => attempt.minutes);
    expect(free).toEqual([4, 4]);
  });

  test('makes a question worth its minutes that would not save them otherwise', async () => {
    // Too long for what is asked before any first try, whatever it costs.
    const slow = { ...parts, questions: parts.questions.map((one) => ({ ...one, minutes: 9 })) };
    expect((await situationAfter(ruleBase(slow)).then(nextStep)).kind).toBe('try');
    const priced = ruleBase({ ...slow, manifest: { ...MANIFEST, tryPrice: 20 } });
    expect(nextStep(await situationAfter(priced))).toMatchObject({ kind: 'ask', question: 'mark' });
  });
});
