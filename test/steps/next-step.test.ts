import { describe, expect, test } from 'vitest';
import type { RuleBase } from '../../src/rulebase/records.js';
import { nextStep } from '../../src/steps/next-step.js';
import { passKey, type Situation } from '../../src/steps/situation.js';
import { cause, finding, is, oneOf, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const light = oneOf('lit', 'dark');
const usual = { lit: 0.8, dark: 0.2 };
/** A rule base in which every kind of step can be due at once. */
const rules: RuleBase = ruleBase({
  questions: [
    question('may-ask', {
      answer: {
        type: 'choice',
        choices: [
          { id: 'yes', title: 'Yes' },
          { id: 'no', title: 'No', ends: 'may-not-ask' },
        ],
      },
      opening: 1,
    }),
    question('scope', { opening: 2 }),
    question('which-app', { opening: 3, when: is('scope', true) }),
    question('light', { answer: light }),
    question('lamp', { answer: light }),
    question('adapter', { answer: oneOf('right', 'wrong') }),
    question('camera-address', { answer: { type: 'address' } }),
    question('computer-address', { answer: { type: 'address' } }),
    question('page', { answer: oneOf('opens', 'does-not') }),
    question('promise', { answer: { type: 'text' }, part: 'promised' }),
  ],
  facts: [
    {
      id: 'same',
      title: 'Same address',
      source: { title: 'RFC 5227', section: '1' },
      type: 'choice',
      sum: 'same-address',
      inputs: ['camera-address', 'computer-address'],
    },
  ],
  findings: [
    finding('by-light', 'light', usual),
    finding('local', 'page', { opens: 0.5, 'does-not': 0.5 }),
    finding(
      'one-address',
      'same',
      { same: 0.02, different: 0.98 },
      {
        asks: ['camera-address', 'computer-address'],
        values: {
          same: { title: 'One address twice', usual: 0.02, defect: { says: 'One address twice.' } },
          different: { title: 'Different', usual: 0.98 },
        },
      },
    ),
  ],
  causes: [
    cause('supply', { signs: { local: { opens: 'seldom' } }, prior: 50 }),
    cause('account', { signs: { local: { opens: 'always' } }, prior: 50 }),
  ],
  remedies: [remedy('supply', { minutes: 40 }), remedy('account', { minutes: 40 })],
  contradictions: [
    {
      id: 'dark-and-lit',
      title: 'Dark and lit',
      source: 'judged',
      when: { all: [is('light', 'dark'), is('lamp', 'lit')] },
      between: ['light', 'lamp'],
      check: 'light',
      says: 'Both cannot be.',
    },
  ],
  'tester-faults': [
    {
      id: 'wrong-adapter',
      title: 'Wrong adapter',
      source: 'judged',
      stage: 'power',
      when: is('adapter', 'wrong'),
      spoils: ['by-light'],
      help: ['Use the other.'],
      askAgain: ['light'],
    },
  ],
});

const everything = {
  'may-ask': 'no',
  light: 'dark',
  lamp: 'lit',
  adapter: 'wrong',
  'camera-address': '172.23.40.57',
  'computer-address': '172.23.40.57',
};

describe('the order of steps', () => {
  const mayAsk = { ...everything, 'may-ask': 'yes' };
  const left = (...ids: readonly string[]): Partial<Situation> => ({ left: new Set(ids) });
  const steps: readonly (readonly [
    string,
    Readonly<Record<string, string | boolean>>,
    Partial<Situation>,
    object,
  ])[] = [
    ['an answer that ends the call, before all', everything, {}, { kind: 'end', how: 'may-not-ask' }],
    [
      'then answers that contradict each other',
      mayAsk,
      {},
      { kind: 'check-answers', conflict: { id: 'dark-and-lit', check: 'light' } },
    ],
    ['then a spoilt check', mayAsk, left('dark-and-lit'), { kind: 'spoilt-check', fault: 'wrong-adapter' }],
    [
      'then the opening',
      mayAsk,
      left('dark-and-lit', 'wrong-adapter'),
      { kind: 'ask', question: 'scope', group: ['scope'], purpose: { kind: 'opening' } },
    ],
    [
      'then what the opening opens',
      { ...mayAsk, scope: true },
      left('dark-and-lit', 'wrong-adapter'),
      { kind: 'ask', question: 'which-app', purpose: { kind: 'opening' } },
    ],
    [
      'then reading back the numbers of a defect, one by one',
      { ...mayAsk, scope: false },
      left('dark-and-lit', 'wrong-adapter'),
      { kind: 'read-back', question: 'camera-address', finding: 'one-address' },
    ],
    [
      'one by one',
      { ...mayAsk, scope: false },
      left('dark-and-lit', 'wrong-adapter', 'read-back:camera-address'),
      { kind: 'read-back', question: 'computer-address' },
    ],
    [
      'then whatever is cheapest',
      { ...mayAsk, scope: false },
      left('dark-and-lit', 'wrong-adapter', 'read-back:camera-address', 'read-back:computer-address'),
      { kind: 'ask', question: 'page', group: ['page'], purpose: { kind: 'finding', finding: 'local' } },
    ],
  ];
  test.each(steps)('%s', async (_, raw, over, step) => {
    expect(nextStep(await situationAfter(rules, raw, over))).toMatchObject(step);
  });

  test('numbers that were pasted need no reading back', async () => {
    const raw = {
      'camera-address': '172.23.40.57',
      'computer-address': '172.23.40.57',
      scope: false,
      'may-ask': 'yes',
    };
    expect(nextStep(await situationAfter(rules, raw, {}, 'pasted')).kind).not.toBe('read-back');
    expect(nextStep(await situationAfter(rules, raw)).kind).toBe('read-back');
  });

  test('the opening is put in its own order, not by id', async () => {
    const turned = {
      ...rules,
      questions: rules.questions.map((one) => (one.id === 'scope' ? { ...one, opening: 0.5 } : one)),
    };
    expect(nextStep(await situationAfter(turned))).toMatchObject({ question: 'scope' });
    expect(nextStep(await situationAfter(rules))).toMatchObject({ question: 'may-ask' });
  });

  test('the opening is not put twice, and not what the person asked to leave', async () => {
    const asked = { askedBefore: new Set(['may-ask']), passed: new Set([passKey('ask', 'scope')]) };
    expect(nextStep(await situationAfter(rules, {}, asked))).toMatchObject({ question: 'page' });
  });
});

/** Past the opening. */
const past = { 'may-ask': 'yes', scope: false };
/** The answer has been looked at twice. */
const sure = { revised: new Set(['page']) };

describe('the cheapest step', () => {
  test('is a remedy once the question is answered', async () => {
    expect(nextStep(await situationAfter(rules, { ...past, page: 'opens' }, sure))).toMatchObject({
      kind: 'try',
      remedy: 'account',
    });
    expect(nextStep(await situationAfter(rules, { ...past, page: 'does-not' }, sure))).toMatchObject({
      kind: 'try',
      remedy: 'supply',
    });
  });

  test('is no question that costs more than it can save', async () => {
    const dear = {
      ...rules,
      questions: rules.questions.map((one) => (one.id === 'page' ? { ...one, minutes: 60 } : one)),
    };
    expect(nextStep(await situationAfter(dear, past))).toMatchObject({ kind: 'try' });
  });

  test('carries its plan and the minutes it expects', async () => {
    const step = nextStep(await situationAfter(rules, { ...past, page: 'opens' }, sure));
    if (step.kind !== 'try') throw new Error(step.kind);
    expect(step.plan[0]).toBe('account');
    expect(step.minutes).toBeGreaterThan(40);
  });

  test('is the same remedy whichever of two alike, by id', async () => {
    const alike: RuleBase = {
      ...rules,
      findings: [],
      causes: ['b', 'a'].map((id) => cause(id)),
      remedies: ['a', 'b'].map((id) => remedy(id)),
    };
    expect(nextStep(await situationAfter(alike, past))).toMatchObject({ remedy: 'a', plan: ['a', 'b'] });
  });

  test('is a visit with nothing left to try, after asking what was promised', async () => {
    const page = { ...past, page: 'opens' };
    const tried = { tried: new Set(['supply', 'account']) };
    expect(nextStep(await situationAfter(rules, page, tried))).toMatchObject({
      kind: 'ask',
      question: 'promise',
      purpose: { kind: 'closing' },
    });
    const step = nextStep(await situationAfter(rules, { ...page, promise: null }, tried));
    expect(step).toEqual({ kind: 'visit', minutes: expect.closeTo(180, 9) });
  });
});

describe('who and what is at hand', () => {
  const hands = (parts: Partial<RuleBase>): RuleBase => ({ ...rules, findings: [], ...parts });

  test.each([
    ['needs other hands', { who: 'installer' } as const, {}],
    ['needs what is not at hand', { needs: ['ladder'] }, {}],
    ['was passed over', {}, { passed: new Set([passKey('try', 'supply')]) }],
    ['was tried', {}, { tried: new Set(['supply']) }],
    ['makes no sense here', { when: is('scope', true) }, {}],
  ])('a remedy that %s is not proposed', async (_, part, over) => {
    const base = hands({
      remedies: [remedy('supply', { minutes: 1, ...part }), remedy('account', { minutes: 90 })],
    });
    const without = hands({
      remedies: [remedy('supply', { minutes: 1 }), remedy('account', { minutes: 90 })],
    });
    expect(nextStep(await situationAfter(without, past))).toMatchObject({ kind: 'try', remedy: 'supply' });
    expect(nextStep(await situationAfter(base, past, over))).not.toMatchObject({ remedy: 'supply' });
  });

  test('an installer with a ladder gets them', async () => {
    const base = hands({ remedies: [remedy('supply', { who: 'installer', needs: ['ladder'] })] });
    const over = { hands: new Set(['installer'] as const), kit: new Set(['ladder']) };
    expect(nextStep(await situationAfter(base, past, over))).toMatchObject({ remedy: 'supply' });
  });
});
