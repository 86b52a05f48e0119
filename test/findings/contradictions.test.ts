import { describe, expect, test } from 'vitest';
import type { RawAnswer } from '../../src/answers/answer.js';
import { type Conflict, conflicts } from '../../src/findings/contradictions.js';
import { settle } from '../../src/findings/settle.js';
import { inWords } from '../../src/messages/say.js';
import type { Finding } from '../../src/rulebase/records.js';
import { finding, is, oneOf, question, ruleBase } from '../ranking/literals.js';
import { answered } from './given.js';

const usual = { lit: 0.9, dark: 0.1 };
const agrees: NonNullable<Finding['repeats']> = {
  finding: 'light',
  agrees: { lit: ['lit'], dark: ['dark'] },
};
const rules = ruleBase({
  questions: ['a-light', 'b-lamp', 'c-beam'].map((id) => question(id, { answer: oneOf('lit', 'dark') })),
  findings: [
    finding('light', 'a-light', usual),
    finding('lamp', 'b-lamp', usual, { repeats: agrees }),
    finding('beam', 'c-beam', usual, { repeats: { finding: 'light', agrees: { dark: ['dark'] } } }),
  ],
  contradictions: [
    {
      id: 'dark-but-beam',
      title: 'Dark, but a beam',
      source: 'judged',
      when: { all: [is('a-light', 'dark'), { not: is('c-beam', 'dark') }] },
      between: ['a-light', 'c-beam'],
      check: 'c-beam',
      says: 'A dark camera has no beam.',
    },
  ],
});

async function conflictsOf(raw: Readonly<Record<string, RawAnswer>>): Promise<readonly Conflict[]> {
  return conflicts(rules, await settle(rules, answered(rules, raw)));
}

describe('answers that cannot all be right', () => {
  test('are named by the rule base where its condition holds', async () => {
    expect(await conflictsOf({ 'a-light': 'dark', 'c-beam': 'lit' })).toEqual([
      {
        id: 'dark-but-beam',
        between: ['a-light', 'c-beam'],
        check: 'c-beam',
        says: 'A dark camera has no beam.',
      },
    ]);
  });

  test.each([
    ['it does not hold', { 'a-light': 'lit', 'c-beam': 'lit' }],
    ['an answer is missing', { 'a-light': 'dark' }],
    ['the caller can’t tell', { 'a-light': 'dark', 'c-beam': null }],
  ])('are not named while %s', async (_, raw) => {
    expect(await conflictsOf(raw)).toEqual([]);
  });

  test('are found where a finding disagrees with the one it repeats', async () => {
    const [one, ...more] = await conflictsOf({ 'a-light': 'lit', 'b-lamp': 'dark' });
    expect(more).toEqual([]);
    expect(one).toMatchObject({ id: 'repeats:lamp', between: ['b-lamp', 'a-light'], check: 'b-lamp' });
    expect(typeof one?.says === 'object' && inWords(one.says)).toBe(
      '"lamp: dark" does not go with "light: lit". One of the two answers is not right.',
    );
  });

  test('are found between two that repeat the same, while that one is not known', async () => {
    const [one, ...more] = await conflictsOf({ 'a-light': null, 'b-lamp': 'lit', 'c-beam': 'dark' });
    expect(more).toEqual([]);
    expect(one).toMatchObject({ id: 'repeats:beam:lamp', between: ['c-beam', 'b-lamp'], check: 'c-beam' });
  });

  test('each disagree with the one they repeat once it is known, not with each other', async () => {
    const found = await conflictsOf({ 'a-light': 'lit', 'b-lamp': 'lit', 'c-beam': 'dark' });
    expect(found.map(({ id }) => id)).toEqual(['repeats:beam']);
  });

  test.each([
    ['they agree', { 'a-light': 'dark', 'b-lamp': 'dark' }],
    ['both repeats agree', { 'b-lamp': 'dark', 'c-beam': 'dark' }],
    ['the value is said to go with anything', { 'a-light': 'lit', 'c-beam': 'lit' }],
  ])('are none where %s', async (_, raw) => {
    expect(await conflictsOf(raw)).toEqual([]);
  });

  test('are not found in two readings of one answer', async () => {
    const one = ruleBase({
      ...rules,
      contradictions: [],
      findings: [
        finding('light', 'a-light', usual),
        finding('lamp', 'a-light', usual, {
          repeats: agrees,
          rules: [{ value: 'dark', conditions: { all: [is('a-light', 'lit')] } }],
        }),
      ],
    });
    expect(conflicts(one, await settle(one, answered(one, { 'a-light': 'lit' })))).toEqual([]);
  });
});
