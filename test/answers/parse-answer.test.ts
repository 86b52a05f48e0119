import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnswerValue } from '../../src/answers/answer.js';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import { inWords } from '../../src/messages/say.js';
import type { AnswerShape } from '../../src/rulebase/records.js';
import { address, mask } from '../arithmetic/given.js';
import { question } from '../ranking/literals.js';

const CHOICES = [
  { id: 'on', title: 'Yes, one is on' },
  { id: 'off', title: 'None is on' },
];
const SHAPES = {
  choice: { type: 'choice', choices: CHOICES },
  several: { type: 'several', choices: CHOICES },
  'yes-no': { type: 'yes-no' },
  text: { type: 'text' },
  number: { type: 'number', unit: 'V', min: 0, max: 60 },
  address: { type: 'address' },
  mask: { type: 'mask' },
  moment: { type: 'moment' },
} as const satisfies Record<AnswerShape['type'], AnswerShape>;
type Kind = keyof typeof SHAPES;
const KINDS = Object.keys(SHAPES) as Kind[];

function parsed(kind: Kind, raw: unknown): AnswerValue | string {
  const result = parseAnswer(question('lights', { answer: SHAPES[kind] }), raw);
  return result.ok ? result.value : inWords(result.problem);
}

describe.each(KINDS)('an answer to a %s question', (kind) => {
  test.each([null, "can't tell", 'can’t tell', ' Cant-Tell ', '?'])('%j is can’t tell', (raw) => {
    expect(parsed(kind, raw)).toEqual({ kind: 'cant-tell' });
  });
});

describe('an answer that fits', () => {
  test.each<[Kind, unknown, AnswerValue]>([
    ['choice', 'on', { kind: 'choice', id: 'on' }],
    ['choice', ' OFF ', { kind: 'choice', id: 'off' }],
    ['choice', 'yes, one is on', { kind: 'choice', id: 'on' }],
    ['several', ['off', 'on'], { kind: 'several', ids: ['off', 'on'] }],
    ['several', ['on', 'ON', 'Yes, one is on'], { kind: 'several', ids: ['on'] }],
    ['several', 'on, off', { kind: 'several', ids: ['on', 'off'] }],
    ['several', [], { kind: 'several', ids: [] }],
    ['several', '', { kind: 'several', ids: [] }],
    ['yes-no', true, { kind: 'yes-no', yes: true }],
    ['yes-no', false, { kind: 'yes-no', yes: false }],
    ['yes-no', ' Y', { kind: 'yes-no', yes: true }],
    ['yes-no', 'no', { kind: 'yes-no', yes: false }],
    ['text', ' it says <b>dark</b> | now ', { kind: 'text', text: ' it says <b>dark</b> | now ' }],
    ['number', '12,5 V', { kind: 'number', number: 12.5 }],
    ['number', 48, { kind: 'number', number: 48 }],
    ['address', '172.23.40.57', { kind: 'address', address: address('172.23.40.57') }],
    ['mask', '/24', { kind: 'mask', mask: mask('255.255.255.0') }],
    [
      'moment',
      '25 Nov 2026 2:30 pm',
      {
        kind: 'moment',
        moment: { kind: 'moment', seconds: Date.UTC(2026, 10, 25, 14, 30) / 1000, within: 60 },
      },
    ],
    ['mask', 24, { kind: 'mask', mask: mask('255.255.255.0') }],
  ])('%s: %j', (kind, raw, value) => {
    expect(parsed(kind, raw)).toEqual(value);
  });
});

describe('an answer that does not fit comes back as what to write instead', () => {
  test.each<[Kind, unknown, string]>([
    ['choice', 'blue', 'on, off'],
    ['choice', 1, 'on, off'],
    ['choice', true, 'on, off'],
    ['choice', ['on'], 'on, off'],
    ['choice', '__proto__', 'on, off'],
    ['several', 'on, blue', 'on, off'],
    ['several', { 0: 'on', length: 1 }, 'on, off'],
    ['several', ['on', null], 'on, off'],
    ['several', [['on']], 'on, off'],
    ['several', 7, 'on, off'],
    ['yes-no', 'maybe', 'yes or no'],
    ['yes-no', 1, 'yes or no'],
    ['yes-no', ['yes'], 'yes or no'],
    ['yes-no', [[true]], 'yes or no'],
    ['yes-no', JSON.parse('{"toString": 1, "valueOf": 1}'), 'yes or no'],
    ['yes-no', JSON.parse('{"__proto__": null}'), 'yes or no'],
    ['text', '', 'Nothing is written'],
    ['text', ' \n\t', 'Nothing is written'],
    ['text', 5, 'text'],
    ['text', ['words'], 'text'],
    ['number', '61', '60'],
    ['number', -1, '0'],
    ['number', true, 'text'],
    ['number', [12], 'text'],
    ['number', Number.NaN, '60'],
    ['number', Number.POSITIVE_INFINITY, '60'],
    ['address', '172.23.40.300', '255'],
    ['address', 172, '172'],
    ['address', { bits: 5 }, 'text'],
    ['mask', '255.0.255.0', '255.0.255.0'],
    ['mask', false, 'text'],
  ])('%s: %j', (kind, raw, hint) => {
    const words = parsed(kind, raw);
    expect(words).toBeTypeOf('string');
    expect(words).toContain(hint);
  });

  test('whatever JSON brings, nothing is thrown and nothing unlisted gets through', () => {
    fc.assert(
      fc.property(fc.constantFrom(...KINDS), fc.jsonValue(), (kind, raw) => {
        const value = parsed(kind, raw);
        if (typeof value === 'string') return;
        expect(['cant-tell', kind]).toContain(value.kind);
        if (value.kind === 'choice') expect(['on', 'off']).toContain(value.id);
        if (value.kind === 'several') for (const id of value.ids) expect(['on', 'off']).toContain(id);
      }),
      { numRuns: 500 },
    );
  });
});
