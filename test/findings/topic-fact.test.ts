import { describe, expect, it } from 'vitest';
import type { Answer, AnswerValue } from '../../src/answers/answer.js';
import { deriveFacts } from '../../src/findings/derive-facts.js';
import type { FactRecord, Question } from '../../src/rulebase/records.js';

const question = (id: string, answer: Question['answer']): Question => ({
  ...{ id, title: id, source: 'judged', stage: 'power', prompt: `${id}?`, help: id, answer },
  ...{ minutes: 1, place: 'anywhere', who: 'anyone' },
});
const QUESTIONS = [
  question('own', { type: 'address' }),
  question('net', { type: 'mask' }),
  question('way-out', { type: 'address' }),
];
const FACT: FactRecord = {
  ...{ id: 'range', title: 'range', source: 'judged', type: 'text', sum: 'subnet' },
  inputs: ['own', 'net', 'way-out'],
  as: { own: 'address', net: 'mask', 'way-out': 'gateway' },
  field: 'network',
};
const answer = (id: string, value: AnswerValue): readonly [string, Answer] => [
  id,
  { question: id, value, origin: 'said' },
];
const OWN = answer('own', { kind: 'address', address: { kind: 'ipv4', bits: 0xac172815 } });
const NET = answer('net', { kind: 'mask', mask: { kind: 'mask', prefix: 24 } });
const UNTOLD = answer('way-out', { kind: 'cant-tell' });
const range = (record: FactRecord, ...answers: (readonly [string, Answer])[]) =>
  deriveFacts([record], new Map(answers), QUESTIONS).get('range');

describe('a fact that a topic of sums gives', () => {
  it('is not there while one of its questions was not put', () => {
    expect(range(FACT, OWN, NET)).toBeUndefined();
  });

  it('does without what nobody could tell where the topic can, and does not rest on it', () => {
    const fact = range({ ...FACT, inputs: ['own', 'net'], as: { own: 'address', net: 'mask' } }, OWN, NET);
    expect(fact?.value).toBe('172.23.40.0');
    expect(fact?.basis).toEqual(['net', 'own']);
    expect(fact?.lines.length).toBeGreaterThan(0);
  });

  it('is not there where the topic can do nothing with what is not known', () => {
    const untold = answer('net', { kind: 'cant-tell' });
    expect(
      range({ ...FACT, inputs: ['own', 'net'], as: { own: 'address', net: 'mask' } }, OWN, untold),
    ).toBeUndefined();
  });

  it('is not there where nobody could tell anything', () => {
    const nothing = ['own', 'net', 'way-out'].map((id) => answer(id, { kind: 'cant-tell' }));
    expect(range(FACT, ...nothing)).toBeUndefined();
  });

  it('takes moments as they were read, with their zone where one was told', () => {
    const clocks = [question('camera', { type: 'moment' }), question('phone', { type: 'moment' })];
    const record: FactRecord = {
      ...{ id: 'off', title: 'off', source: 'judged', type: 'choice', sum: 'clock', field: 'mistake' },
      inputs: ['camera', 'phone'],
      as: { camera: 'camera', phone: 'truth' },
    };
    const at = (id: string, hour: number, zoneMinutes?: number) =>
      answer(id, {
        kind: 'moment',
        moment: {
          ...{ kind: 'moment', seconds: Date.UTC(2026, 10, 25, hour) / 1000, within: 60 },
          ...(zoneMinutes === undefined ? {} : { zoneMinutes }),
        },
      });
    const off = (...answers: (readonly [string, Answer])[]) =>
      deriveFacts([record], new Map(answers), clocks).get('off')?.value;
    expect(off(at('camera', 13), at('phone', 14))).toBe('summer-time');
    expect(off(at('camera', 13, 0), at('phone', 14, 60))).toBe('none');
  });

  it('says when it is an estimate', () => {
    const record = { ...FACT, inputs: ['own', 'net'], as: { own: 'address', net: 'mask' }, estimate: true };
    expect(range(record, OWN, NET)?.estimate).toBe(true);
    expect(range(FACT, OWN, NET, UNTOLD)?.estimate).toBeUndefined();
  });
});
