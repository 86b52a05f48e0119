import { describe, expect, test } from 'vitest';
import { beforeVisit, chanceOfVisit } from '../../src/steps/before-visit.js';
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

  test('what tells little is asked where it takes a minute, and not where it takes six', async () => {
    const faint = {
      ...rules,
      causes: rules.causes.map((one) =>
        one.id === 'mast' ? { ...one, signs: { rusty: { yes: 'half' } } } : one,
      ),
    };
    const taking = (minutes: number) => ({
      ...faint,
      questions: faint.questions.map((one) => ({ ...one, minutes })),
    });
    expect(beforeVisit(await situationAfter(taking(1)))?.settles).toBe('rusty');
    expect(beforeVisit(await situationAfter(taking(6)))).toBeUndefined();
  });

  test('somebody is sent where no question is left', async () => {
    expect(nextStep(await situationAfter(rules, { rust: 'no' })).kind).toBe('visit');
  });
});
