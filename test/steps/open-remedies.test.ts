import { describe, expect, test } from 'vitest';
import { nextStep } from '../../src/steps/next-step.js';
import { openRemedies } from '../../src/steps/open-remedies.js';
import { cause, finding, is, MANIFEST, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
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

describe('what is asked before a remedy, whatever is answered', () => {
  const looked = ruleBase({
    ...parts,
    questions: [
      question('mark', { answer: oneOf('left', 'right'), minutes: 30 }),
      question('web', { answer: oneOf('opens', 'fails'), minutes: 1, when: is('alone', true) }),
      question('alone'),
    ],
    remedies: [
      remedy('lead', { minutes: 1, askBefore: ['web'], when: is('alone', true) }),
      remedy('plug', { minutes: 40 }),
    ],
  });

  test('comes before it, after what decides whether it makes sense', async () => {
    const [lead] = openRemedies(await situationAfter(looked));
    expect(lead?.gate.map(({ id }) => id)).toEqual(['alone', 'web']);
    expect(nextStep(await situationAfter(looked, { alone: true }))).toMatchObject({
      kind: 'ask',
      question: 'web',
      purpose: { kind: 'gate', remedy: 'lead' },
    });
  });

  test('is no price of it, unlike what opens a gate', async () => {
    const [lead] = openRemedies(await situationAfter(looked, { alone: true }));
    expect(lead?.attempt.minutes).toBe(1);
  });

  test.each(['opens', 'fails', null] as const)(
    'lets it through once it was answered with %s',
    async (web) => {
      const step = nextStep(await situationAfter(looked, { alone: true, web }));
      expect(step).toMatchObject({ kind: 'try', remedy: 'lead' });
    },
  );

  test('opens no gate that is shut', async () => {
    const open = openRemedies(await situationAfter(looked, { alone: false }));
    expect(open.map(({ remedy: { id } }) => id)).toEqual(['plug']);
  });
});
