import { describe, expect, test, vi } from 'vitest';
import type { AnswerValue } from '../../src/answers/answer.js';
import { deriveFacts } from '../../src/findings/derive-facts.js';
import type { FactRecord } from '../../src/rulebase/records.js';
import { question, ruleBase } from '../ranking/literals.js';
import { answered } from './given.js';

// Sums of the test alone, so that chains of every kind of value can be laid.
vi.mock('../../src/findings/sums.js', () => ({
  workSum: (name: string, inputs: readonly AnswerValue[]) => {
    const numbers = inputs.flatMap((one) => (one.kind === 'number' ? [one.number] : []));
    const total = numbers.reduce((sum, one) => sum + one, 0);
    if (name === 'total') return { value: total, lines: [{ id: 'typed.empty' }] };
    if (name === 'over-ten') return { value: total > 10, lines: [] };
    if (name === 'kinds') return { value: inputs.map(({ kind }) => kind).join(' '), lines: [] };
    return undefined;
  },
}));

const number = { answer: { type: 'number', unit: 'V', min: 0, max: 60 } } as const;
const rules = ruleBase({
  questions: [
    question('a', number),
    question('b', number),
    question('lit'),
    question('where', { answer: { type: 'address' } }),
    question('net', { answer: { type: 'mask' } }),
    question('kit', { answer: { type: 'several', choices: [{ id: 'ladder', title: 'A ladder' }] } }),
  ],
});

function record(id: string, sum: string, ...inputs: readonly string[]): FactRecord {
  return { id, title: id, source: 'judged', type: 'number', sum, inputs };
}

describe('facts', () => {
  test('are the plain values of the answers, each resting on itself', () => {
    const facts = deriveFacts(
      [],
      answered(rules, { a: 5, lit: false, where: '172.23.40.57', net: '/24', kit: ['ladder'] }),
    );
    expect([...facts].map(([id, { value, basis }]) => [id, value, basis])).toEqual([
      ['a', 5, ['a']],
      ['lit', false, ['lit']],
      ['where', '172.23.40.57', ['where']],
      ['net', '255.255.255.0', ['net']],
      ['kit', ['ladder'], ['kit']],
    ]);
  });

  test('are not made by can’t tell', () => {
    expect(deriveFacts([record('sum', 'total', 'a')], answered(rules, { a: null })).size).toBe(0);
  });

  const chain = [
    record('c-high', 'over-ten', 'b-both'),
    record('b-both', 'total', 'a-first', 'b'),
    record('a-first', 'total', 'a'),
  ];

  test('build on facts, in whatever order the records stand, and rest on all the answers below', () => {
    const facts = deriveFacts(chain, answered(rules, { b: 7, a: 5 }));
    expect(facts.get('b-both')).toMatchObject({ value: 12, basis: ['a', 'b'] });
    expect(facts.get('c-high')).toMatchObject({ value: true, basis: ['a', 'b'], lines: [] });
    expect(facts.get('a-first')?.lines).toEqual([{ id: 'typed.empty' }]);
    expect(deriveFacts([...chain].reverse(), answered(rules, { b: 7, a: 5 }))).toEqual(facts);
  });

  test('break off where one input of the chain is missing', () => {
    const facts = deriveFacts(chain, answered(rules, { a: 5, b: null }));
    expect([...facts.keys()].sort()).toEqual(['a', 'a-first']);
  });

  test('are not made by a sum that comes to nothing, and neither is what builds on it', () => {
    const facts = deriveFacts(
      [record('dead', 'no-such-sum', 'a'), record('on-dead', 'total', 'dead')],
      answered(rules, { a: 5 }),
    );
    expect([...facts.keys()]).toEqual(['a']);
  });

  test('go into a sum with the kind of their value; an answer goes in as it was parsed', () => {
    const facts = deriveFacts(
      [
        record('text', 'kinds', 'a'),
        record('seen', 'kinds', 'where', 'net', 'text', 'high', 'both'),
        record('both', 'total', 'a'),
        record('high', 'over-ten', 'a'),
      ],
      answered(rules, { a: 5, where: '10.77.5.9', net: '/16' }),
    );
    expect(facts.get('seen')?.value).toBe('address mask choice yes-no number');
  });
});
