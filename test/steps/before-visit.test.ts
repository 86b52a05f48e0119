import { describe, expect, test } from 'vitest';
import { beforeVisit, chanceOfVisit } from '../../src/steps/before-visit.js';
import { mostTellingFor } from '../../src/steps/look-ahead.js';
import { nextStep } from '../../src/steps/next-step.js';
import { cause, finding, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const FAR = [
  'arch',
  'beam',
  'cleat',
  'drain',
  'eave',
  'flue',
  'gable',
  'hinge',
  'joist',
  'kerb',
  'lintel',
  'mast',
];

/** Nothing of it can be mended on the call, so no answer saves a minute there; the list of a visit holds six. */
const rules = ruleBase({
  questions: [question('rust', { answer: oneOf('yes', 'no') })],
  findings: [finding('rusty', 'rust', { yes: 0.1, no: 0.9 })],
  causes: FAR.map((id) => cause(id, id === 'mast' ? { signs: { rusty: { yes: 'always' } } } : {})),
  remedies: FAR.map((id) => remedy(id, { who: 'installer' })),
});

describe('before somebody is sent', () => {
  test('what tells most of what has to be brought is asked, though it saves no minute on the call', async () => {
    const situation = await situationAfter(rules);
    expect(chanceOfVisit(situation)).toBeLessThan(0.8);
    expect(beforeVisit(situation)?.settles).toBe('rusty');
    expect(nextStep(situation)).toMatchObject({ kind: 'ask', question: 'rust' });
  });

  test('nothing more is asked once the list surely brings the picture back', async () => {
    const situation = await situationAfter(rules);
    const sure = {
      ...situation,
      probabilities: situation.probabilities.map((_, at) => (at === 0 ? 0.95 : 0)),
    };
    expect(chanceOfVisit(sure)).toBeGreaterThan(0.8);
    expect(beforeVisit(sure)).toBeUndefined();
  });

  test('what takes longer than six minutes, or tells next to nothing, is left', async () => {
    const slow = { ...rules, questions: rules.questions.map((one) => ({ ...one, minutes: 7 })) };
    expect(beforeVisit(await situationAfter(slow))).toBeUndefined();
    const dull = { ...rules, causes: rules.causes.map((one) => ({ ...one, signs: {} })) };
    expect(beforeVisit(await situationAfter(dull))).toBeUndefined();
  });

  test('is asked only what would change the list for the better', async () => {
    // What the mark tells apart stands on the list anyway: whichever it is, it is brought.
    const brought = {
      ...rules,
      causes: rules.causes
        .slice(0, 5)
        .map((one, at) => (at === 0 ? { ...one, signs: { rusty: { yes: 'always' } } } : one)),
    } as typeof rules;
    const situation = await situationAfter(brought);
    const faint = { ...situation, probabilities: situation.probabilities.map((p) => p * 0.8) };
    expect(chanceOfVisit(faint)).toBeLessThan(0.8);
    expect(mostTellingFor(faint, 0.006, 6)?.settles).toBe('rusty');
    expect(beforeVisit(faint)).toBeUndefined();
  });

  test('a second visit has to cost more than the question', async () => {
    const cheap = {
      ...rules,
      manifest: { ...rules.manifest, visit: { labourMinutes: 5, waitDays: 0, minutesPerDay: 60 } },
    };
    expect(beforeVisit(await situationAfter(cheap))).toBeUndefined();
  });

  test('somebody is sent where no question is left', async () => {
    expect(nextStep(await situationAfter(rules, { rust: 'no' })).kind).toBe('visit');
  });
});
