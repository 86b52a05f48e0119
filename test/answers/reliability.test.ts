import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Answer, isCantTell, isConfirmed, ORIGINS } from '../../src/answers/answer.js';
import { combinedErrorRate, errorRate, type Leaning, leaningOf } from '../../src/answers/reliability.js';
import { MANIFEST, question } from '../ranking/literals.js';

const { reliability } = MANIFEST;
const volts = question('volts', { answer: { type: 'number', unit: 'V', min: 0, max: 60 } });

describe('the error rate of one answer', () => {
  test.each([
    ['said', 0.07],
    ['agreed', 0.01],
    ['pasted', 0.005],
    ['read', 0.002],
  ] as const)('that was %s', (origin, rate) => {
    expect(errorRate(reliability, volts, origin, false)).toBe(rate);
  });

  test('that was said goes by the kind of answer', () => {
    expect(errorRate(reliability, question('lit'), 'said', false)).toBe(0.04);
  });

  test.each(ORIGINS)('that was %s and contradicts another is that of a disputed one', (origin) => {
    expect(errorRate(reliability, volts, origin, true)).toBe(0.3);
  });
});

describe('the error rate of a finding', () => {
  test('resting on nothing is 0', () => {
    expect(combinedErrorRate([])).toBe(0);
  });

  test('is the chance that one of its answers is wrong', () => {
    expect(combinedErrorRate([{ rate: 0.05 }, { rate: 0.1 }])).toBeCloseTo(1 - 0.95 * 0.9, 12);
  });

  test('counts one paste once, at its worst, and another paste again', () => {
    const one = { rate: 0.005, paste: 'p1' };
    expect(combinedErrorRate([one, one, one])).toBeCloseTo(0.005, 12);
    expect(combinedErrorRate([one, { rate: 0.3, paste: 'p1' }])).toBeCloseTo(0.3, 12);
    expect(combinedErrorRate([{ rate: 0.3, paste: 'p1' }, one])).toBeCloseTo(0.3, 12);
    expect(combinedErrorRate([one, { rate: 0.005, paste: 'p2' }])).toBeCloseTo(1 - 0.995 ** 2, 12);
    expect(combinedErrorRate([one, { rate: 0.05 }])).toBeCloseTo(1 - 0.995 * 0.95, 12);
  });

  test('lies between its worst answer and the sum of all, in any order', () => {
    const leaning = fc.record({ rate: fc.double({ min: 0, max: 1, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(leaning, { minLength: 1, maxLength: 6 }), (leanings: readonly Leaning[]) => {
        const rates = leanings.map(({ rate }) => rate);
        const combined = combinedErrorRate(leanings);
        expect(combined).toBeGreaterThanOrEqual(Math.max(...rates) - 1e-12);
        expect(combined).toBeLessThanOrEqual(rates.reduce((sum, rate) => sum + rate, 0) + 1e-12);
        expect(combinedErrorRate([...leanings].reverse())).toBeCloseTo(combined, 12);
      }),
    );
  });
});

describe('an answer', () => {
  const answer: Answer = { question: 'volts', value: { kind: 'number', number: 48 }, origin: 'pasted' };

  test('takes its paste along into a finding, and no paste where it has none', () => {
    expect(leaningOf(reliability, volts, { ...answer, paste: 'p1' }, false)).toEqual({
      rate: 0.005,
      paste: 'p1',
    });
    expect(leaningOf(reliability, volts, answer, false)).toEqual({ rate: 0.005 });
  });

  test.each(ORIGINS)('that was %s is confirmed unless it was only said', (origin) => {
    expect(isConfirmed({ ...answer, origin })).toBe(origin !== 'said');
  });

  test('is can’t tell only where it was given as such', () => {
    expect(isCantTell({ ...answer, value: { kind: 'cant-tell' } })).toBe(true);
    expect(isCantTell(answer)).toBe(false);
    expect(isCantTell(undefined)).toBe(false);
  });
});
