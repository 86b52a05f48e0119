import { describe, expect, test } from 'vitest';
import { beforeFirstTry } from '../../src/steps/before-first-try.js';
import { nextStep } from '../../src/steps/next-step.js';
import { openRemedies } from '../../src/steps/open-remedies.js';
import type { Situation } from '../../src/steps/situation.js';
import { cause, finding, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

/** Two like causes, each mended in a minute: by minutes alone the one is tried, and then the other. */
const rulesOf = (minutes: number, priors: readonly [number, number] = [50, 50], tells = 'always') =>
  ruleBase({
    questions: [question('mark', { answer: oneOf('left', 'right'), minutes })],
    findings: [finding('marked', 'mark', { left: 0.5, right: 0.5 })],
    causes: [
      cause('lead', { prior: priors[0], signs: { marked: { left: tells } } }),
      cause('plug', { prior: priors[1], signs: { marked: { right: tells } } }),
    ],
    remedies: [remedy('lead', { minutes: 1 }), remedy('plug', { minutes: 1 })],
  });

const first = (situation: Situation) => openRemedies(situation)[0]?.attempt;

describe('before anything is tried', () => {
  test('a first try that would more likely be in vain waits for what tells much in a few minutes', async () => {
    const situation = await situationAfter(rulesOf(3));
    expect(beforeFirstTry(situation, first(situation))?.settles).toBe('marked');
    expect(nextStep(situation)).toMatchObject({ kind: 'ask', question: 'mark' });
  });

  test('what is likelier to help than not is tried at once', async () => {
    const situation = await situationAfter(rulesOf(3, [90, 10]));
    expect(beforeFirstTry(situation, first(situation))).toBeUndefined();
    expect(nextStep(situation)).toMatchObject({ kind: 'try', remedy: 'lead' });
  });

  test('a question of more than four minutes does not come before it, or of more than eight where it is a shot in the dark', async () => {
    const five = await situationAfter(rulesOf(5));
    expect(beforeFirstTry(five, first(five))).toBeUndefined();
    const dark = first(five) && { ...first(five), mends: [[0, 0.1]] as const };
    expect(beforeFirstTry(five, dark as never)?.settles).toBe('marked');
    const nine = await situationAfter(rulesOf(9));
    expect(beforeFirstTry(nine, dark as never)).toBeUndefined();
  });

  test('a question that tells next to nothing is not put', async () => {
    const situation = await situationAfter(rulesOf(3, [50, 50], 'half'));
    expect(beforeFirstTry(situation, first(situation))).toBeUndefined();
  });

  test('once something was tried, minutes alone decide', async () => {
    const situation = { ...(await situationAfter(rulesOf(3))), tried: new Set(['other']) };
    expect(beforeFirstTry(situation, first(situation))).toBeUndefined();
  });
});
