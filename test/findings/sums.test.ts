import { describe, expect, test } from 'vitest';
import type { AnswerValue } from '../../src/answers/answer.js';
import { SUM_NAMES, workSum } from '../../src/findings/sums.js';
import { inWords } from '../../src/messages/say.js';
import { address, mask } from '../arithmetic/given.js';

const at = (text: string): AnswerValue => ({ kind: 'address', address: address(text) });
const net = (text: string): AnswerValue => ({ kind: 'mask', mask: mask(text) });
const camera = at('172.23.40.57');
const router = at('172.23.40.1');
const computer = at('172.23.41.20');
const blank = at('0.0.0.0');

/** Each sum with inputs that fit, in the order its record lists them, and what then comes out. */
const FITTING: Readonly<Record<string, readonly [readonly AnswerValue[], unknown]>> = {
  'gateway-standing': [[camera, net('/24'), router], 'inside'],
  'seen-as-neighbour': [[camera, net('/24'), computer, net('/16')], 'only-computer'],
  'host-standing': [[camera, net('/24')], 'host'],
  'address-kind': [[camera], 'private'],
  'gateway-is-router': [[router, router], 'router'],
  'dns-standing': [[router, router, camera, net('/24')], 'router'],
  'same-range': [[camera, router, net('/24')], 'same'],
  'same-address': [[camera, camera], 'same'],
};

describe('the sums a fact may name', () => {
  test.each(Object.entries(FITTING))(
    '%s is worked from inputs in the order of the record',
    (name, [inputs, value]) => {
      expect(SUM_NAMES).toContain(name);
      expect(workSum(name, inputs)?.value).toBe(value);
    },
  );

  test('the order of the inputs matters', () => {
    expect(workSum('seen-as-neighbour', [computer, net('/16'), camera, net('/24')])?.value).toBe(
      'only-camera',
    );
  });

  test('writes the sum out in sentences whose placeholders are all filled', () => {
    const lines = workSum('gateway-standing', [camera, net('/24'), at('172.23.41.1')])?.lines ?? [];
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(inWords(line)).not.toMatch(/[{}]/);
  });

  test.each(Object.entries(FITTING))('%s needs every input, of the right kind', (name, [inputs]) => {
    for (const [i] of inputs.entries()) {
      const swapped = (one: AnswerValue) => inputs.map((input, j) => (j === i ? one : input));
      expect(workSum(name, swapped({ kind: 'text', text: '172.23.40.57' }))).toBeUndefined();
      expect(workSum(name, swapped({ kind: 'cant-tell' }))).toBeUndefined();
    }
    expect(workSum(name, inputs.slice(0, -1))).toBeUndefined();
  });

  test.each([
    ['gateway-standing', [blank, net('/24'), router]],
    ['seen-as-neighbour', [camera, net('/24'), blank, net('/24')]],
    ['gateway-is-router', [blank, router]],
    ['same-range', [blank, router, net('/24')]],
    ['dns-standing', [router, router, blank, net('/24')]],
    ['same-address', [blank, blank]],
  ] as const)('%s says nothing of an empty field', (name, inputs) => {
    expect(workSum(name, inputs)).toBeUndefined();
  });

  test.each(['no-such-sum', 'constructor', '__proto__', 'toString'])('%s is none of them', (name) => {
    expect(workSum(name, [camera, net('/24'), router])).toBeUndefined();
    expect(SUM_NAMES).not.toContain(name);
  });

  test('are listed by name', () => {
    expect([...SUM_NAMES]).toEqual([...SUM_NAMES].sort());
  });
});
