import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/answers/answer.js';
import { settle } from '../../src/findings/settle.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { finding, is, oneOf, question, ruleBase } from '../ranking/literals.js';
import { answered } from './given.js';

const usual = { good: 0.8, bad: 0.2 };
const rules: RuleBase = ruleBase({
  questions: [
    question('lights', { answer: oneOf('good', 'bad') }),
    question('page', { answer: oneOf('good', 'bad') }),
    question('wifi'),
    question('adapter', { answer: oneOf('right', 'wrong') }),
  ],
  findings: [
    // Named so that each builds on one that sorts after it.
    finding('c-lights', 'lights', usual),
    finding('b-local', 'page', usual, {
      rules: [
        { value: 'good', conditions: { all: [is('page', 'good')] } },
        { value: 'bad', conditions: { all: [is('page', 'bad'), is('c-lights', 'good')] } },
      ],
    }),
    finding('a-path', 'page', usual, {
      asks: ['page', 'wifi'],
      rules: [
        { value: 'good', conditions: { all: [is('b-local', 'good')] } },
        {
          value: 'bad',
          conditions: { all: [{ not: is('b-local', 'good') }, is('wifi', true)] },
        },
      ],
    }),
  ],
  'tester-faults': [
    {
      id: 'wrong-adapter',
      title: 'Wrong adapter',
      source: 'judged',
      stage: 'power',
      when: is('adapter', 'wrong'),
      spoils: ['b-local'],
      help: ['Use the other one.'],
      askAgain: ['page'],
    },
  ],
});

async function valuesOf(base: RuleBase, answers: Answers): Promise<Readonly<Record<string, string>>> {
  const { findings } = await settle(base, answers);
  return Object.fromEntries([...findings.values()].map(({ finding: id, value }) => [id, value]));
}

describe('settling findings', () => {
  test('builds on findings of layers before, each with the answers below it', async () => {
    const answers = answered(rules, { lights: 'good', page: 'bad', wifi: true });
    const { findings, facts } = await settle(rules, answers);
    expect(findings.get('a-path')).toMatchObject({ value: 'bad', basis: ['lights', 'page', 'wifi'] });
    expect(findings.get('b-local')).toMatchObject({ value: 'bad', basis: ['lights', 'page'] });
    expect(facts.get('b-local')?.value).toBe('bad');
  });

  test('adds up the error rates of all the answers below', async () => {
    const { findings } = await settle(rules, answered(rules, { lights: 'good', page: 'bad', wifi: true }));
    expect(findings.get('c-lights')?.errorRate).toBeCloseTo(0.05, 12);
    expect(findings.get('a-path')?.errorRate).toBeCloseTo(1 - 0.95 * 0.95 * 0.96, 12);
  });

  test('takes a disputed answer for what it is worth', async () => {
    const answers = answered(rules, { lights: 'good' });
    const { findings } = await settle(rules, answers, new Set(['lights']));
    expect(findings.get('c-lights')?.errorRate).toBeCloseTo(0.3, 12);
  });

  test.each([
    ['nothing known below', {}],
    ['can’t tell', { page: null, wifi: true }],
    ['a finding below that is not known', { page: 'bad', wifi: true }],
  ])('leaves open what rests on %s, "not" included', async (_, raw) => {
    expect(await valuesOf(rules, answered(rules, raw))).toEqual({});
  });

  test('gives the higher priority the last word, else the first rule of the record', async () => {
    const twice = (first: number | undefined, second: number | undefined): RuleBase => ({
      ...rules,
      findings: [
        finding('c-lights', 'lights', usual, {
          rules: [first, second].map((priority, i) => ({
            value: i === 0 ? 'good' : 'bad',
            conditions: { all: [is('lights', 'good')] },
            ...(priority === undefined ? {} : { priority }),
          })),
        }),
      ],
    });
    const answers = answered(rules, { lights: 'good' });
    expect(await valuesOf(twice(undefined, undefined), answers)).toEqual({ 'c-lights': 'good' });
    expect(await valuesOf(twice(undefined, 2), answers)).toEqual({ 'c-lights': 'bad' });
    expect(await valuesOf(twice(3, 2), answers)).toEqual({ 'c-lights': 'good' });
  });

  test('rules beyond the tenth still fall in the order of the record', async () => {
    const many = {
      ...rules,
      findings: [
        finding('c-lights', 'lights', usual, {
          rules: Array.from({ length: 12 }, (_, i) => ({
            value: i === 2 ? 'bad' : 'good',
            conditions: { all: [is('lights', i >= 2 ? 'good' : 'bad')] },
          })),
        }),
      ],
    };
    expect(await valuesOf(many, answered(rules, { lights: 'good' }))).toEqual({ 'c-lights': 'bad' });
  });
});

describe('a tester fault', () => {
  const raw = { lights: 'good', page: 'bad', wifi: true, adapter: 'wrong' };

  test('spoils its check and whatever builds on it, and is named', async () => {
    const { findings, facts, testerFaults } = await settle(rules, answered(rules, raw));
    expect(testerFaults).toEqual(['wrong-adapter']);
    expect([...findings.keys()]).toEqual(['c-lights']);
    expect(facts.has('b-local')).toBe(false);
    expect(facts.has('a-path')).toBe(false);
  });

  test('leaves what another rule shows without the spoilt check', async () => {
    const other = {
      ...rules,
      findings: rules.findings.map((one) =>
        one.id === 'a-path'
          ? { ...one, rules: [...one.rules, { value: 'good', conditions: { all: [is('wifi', true)] } }] }
          : one,
      ),
    };
    expect(await valuesOf(other, answered(rules, raw))).toEqual({ 'a-path': 'good', 'c-lights': 'good' });
  });

  test.each([
    ['does not hold', { ...raw, adapter: 'right' }],
    ['is not known to hold', { ...raw, adapter: null }],
  ])('that %s spoils nothing', async (_, answers) => {
    const { findings, testerFaults } = await settle(rules, answered(rules, answers));
    expect(testerFaults).toEqual([]);
    expect(findings.get('b-local')?.value).toBe('bad');
  });
});

test('calls that overlap do not disturb each other', async () => {
  const calls = Array.from({ length: 40 }, (_, i) =>
    answered(rules, {
      lights: i % 2 === 0 ? 'good' : 'bad',
      page: i % 3 === 0 ? 'good' : 'bad',
      wifi: i % 5 === 0,
      adapter: i % 7 === 0 ? 'wrong' : 'right',
    }),
  );
  const oneByOne = [];
  for (const answers of calls) oneByOne.push(await settle(rules, answers));
  expect(await Promise.all(calls.map((answers) => settle(rules, answers)))).toEqual(oneByOne);
  expect(new Set(oneByOne.map((one) => JSON.stringify([...one.findings]))).size).toBeGreaterThan(4);
});
