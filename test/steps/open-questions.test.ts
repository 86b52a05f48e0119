import { describe, expect, test } from 'vitest';
import type { RawAnswer } from '../../src/answers/answer.js';
import type { Condition } from '../../src/rulebase/condition.js';
import { canDo, groupFor, groupToDecide, questionsBehind } from '../../src/steps/open-questions.js';
import { passKey, type Situation } from '../../src/steps/situation.js';
import { finding, is, oneOf, question, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const address = { answer: { type: 'address' } } as const;
const rules = ruleBase({
  questions: [
    question('leads', { answer: oneOf('wired', 'wifi') }),
    question('light', { when: is('leads', 'wired') }),
    question('port', { when: { all: [is('by-lead', 'wired'), { not: is('light', true) }] } }),
    question('bars', { when: { any: [is('leads', 'wifi'), is('spare', true)] } }),
    question('spare'),
    question('slow', { minutes: 9 }),
    question('both', { when: { all: [is('leads', 'wired'), is('spare', true)] } }),
    question('volts', { who: 'installer' }),
    question('wire-map', { needs: ['patch-lead'] }),
    question('hen', { when: is('egg', true) }),
    question('egg', { when: is('hen', true) }),
    question('own', address),
    question('router', address),
    question('same-known', { when: is('same', 'same') }),
  ],
  findings: [finding('by-lead', 'leads', { wired: 0.6, wifi: 0.4 })],
  facts: [
    {
      id: 'same',
      title: 'Same',
      source: 'judged',
      type: 'choice',
      sum: 'same-address',
      inputs: ['own', 'router'],
    },
  ],
});

async function group(
  wanted: readonly string[],
  raw: Readonly<Record<string, RawAnswer>> = {},
  over: Partial<Situation> = {},
): Promise<readonly string[] | undefined> {
  return groupFor(await situationAfter(rules, raw, over), wanted)?.map(({ id }) => id);
}

describe('the questions behind a fact', () => {
  test.each([
    ['light', ['light']],
    ['same', ['own', 'router']],
    ['by-lead', ['leads']],
    ['stranger', []],
  ])('%s', (id, questions) => {
    expect(questionsBehind(rules, id)).toEqual(questions);
  });
});

describe('a group of questions', () => {
  test('has the questions first that decide whether the others make sense, each once', async () => {
    expect(await group(['light'])).toEqual(['leads', 'light']);
    expect(await group(['light', 'leads', 'light'])).toEqual(['leads', 'light']);
    expect(await group(['port'])).toEqual(['leads', 'light', 'port']);
    expect(await group(['same-known'])).toEqual(['own', 'router', 'same-known']);
  });

  test('leaves out what is answered', async () => {
    expect(await group(['light'], { leads: 'wired' })).toEqual(['light']);
    expect(await group(['light', 'spare'], { leads: 'wired', light: true })).toEqual(['spare']);
    expect(await group(['spare'], { spare: false })).toEqual([]);
  });

  test.each<[string, readonly string[], Readonly<Record<string, RawAnswer>>]>([
    ['makes no sense', ['light'], { leads: 'wifi' }],
    ['was answered can’t tell', ['spare', 'leads'], { spare: null }],
    ['waits for what the caller can’t tell', ['light'], { leads: null }],
    ['waits for two things, one of which the caller can’t tell', ['both'], { leads: null }],
    ['waits for what waits for what the caller can’t tell', ['port'], { leads: null }],
    ['waits for a sum that came to nothing', ['same-known'], { own: '0.0.0.0', router: '0.0.0.0' }],
    ['does not exist', ['stranger'], {}],
    ['waits for itself in the end', ['hen'], {}],
    ['needs other hands', ['volts'], {}],
    ['needs what is not at hand', ['wire-map'], {}],
  ])('is none where one of them %s', async (_, wanted, raw) => {
    expect(await group(wanted, raw)).toBeUndefined();
  });

  test('waits for either of two things while one can still be told', async () => {
    expect(await group(['bars'], { leads: null })).toEqual(['spare', 'bars']);
    expect(await group(['bars'], { leads: null, spare: null })).toBeUndefined();
  });

  test('is none where the person asked to leave one of them, in front included', async () => {
    const passed = new Set([passKey('ask', 'leads')]);
    expect(await group(['leads'], {}, { passed })).toBeUndefined();
    expect(await group(['light'], {}, { passed })).toBeUndefined();
  });

  test('comes with the right hands and kit', async () => {
    expect(await group(['volts'], {}, { hands: new Set(['installer']) })).toEqual(['volts']);
    expect(await group(['wire-map'], {}, { kit: new Set(['patch-lead']) })).toEqual(['wire-map']);
  });
});

test('a job needs hands and every piece of kit', () => {
  const person = { hands: new Set(['owner'] as const), kit: new Set(['ladder']) };
  expect(canDo(person, { who: 'owner' })).toBe(true);
  expect(canDo(person, { who: 'installer' })).toBe(false);
  expect(canDo(person, { who: 'owner', needs: ['ladder'] })).toBe(true);
  expect(canDo(person, { who: 'owner', needs: ['ladder', 'patch-lead'] })).toBe(false);
});

describe('whether a condition can still come true', () => {
  const alive = is('spare', true);
  const dead = is('light', true);
  const right = is('leads', 'wired');
  const wrong = is('leads', 'wifi');
  test.each<[string, Condition, boolean]>([
    ['what can be asked', alive, true],
    ['what was asked in vain', dead, false],
    ['what is known to be right', right, true],
    ['what is known to be wrong', wrong, false],
    ['all, with one in vain', { all: [alive, dead] }, false],
    ['all, with one wrong', { all: [alive, wrong] }, false],
    ['all right or open', { all: [alive, right] }, true],
    ['any, with one open', { any: [dead, alive] }, true],
    ['any, with none open', { any: [dead, wrong] }, false],
    ['not of something open', { not: alive }, true],
    ['not of something in vain', { not: dead }, false],
    ['not of something right', { not: right }, false],
    ['not all, one open', { not: { all: [right, alive] } }, true],
    ['not any, one right', { not: { any: [right, alive] } }, false],
  ])('%s', async (_, condition, could) => {
    const situation = await situationAfter(rules, { leads: 'wired', light: null });
    expect(groupToDecide(situation, [condition]) !== undefined).toBe(could);
  });
});

describe('the questions that decide a condition', () => {
  const spare = is('spare', true);
  const slow = is('slow', true);
  const right = is('leads', 'wired');
  test.each<[string, Condition, readonly string[]]>([
    ['all: every open part', { all: [right, spare, slow] }, ['spare', 'slow']],
    ['any: the quickest part that is enough', { any: [slow, spare] }, ['spare']],
    ['not all: the quickest part that may be wrong', { not: { all: [right, slow, spare] } }, ['spare']],
    ['not any: every part', { not: { any: [slow, spare] } }, ['slow', 'spare']],
    ['not not any: the quickest part again', { not: { not: { any: [slow, spare] } } }, ['spare']],
    ['nothing for what holds already', { any: [right, slow] }, []],
  ])('%s', async (_, condition, wanted) => {
    const group = groupToDecide(await situationAfter(rules, { leads: 'wired', light: null }), [condition]);
    expect(group?.map(({ id }) => id)).toEqual(wanted);
  });

  test('of several conditions come together, each once', async () => {
    const group = groupToDecide(await situationAfter(rules), [right, { all: [spare, right] }]);
    expect(group?.map(({ id }) => id)).toEqual(['leads', 'spare']);
  });
});
