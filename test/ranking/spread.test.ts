import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FLOOR, floored, spread } from '../../src/ranking/spread.js';

const WORDS = { always: 0.98, mostly: 0.8, sometimes: 0.2, seldom: 0.1, none: 0 };
const usual = new Map([
  ['a', 0.5],
  ['b', 0.3],
  ['c', 0.2],
]);

function total(shares: readonly number[]): number {
  return shares.reduce((sum, share) => sum + share, 0);
}

function near(actual: readonly number[], wanted: readonly number[]): void {
  expect(actual.length).toBe(wanted.length);
  for (const [i, share] of wanted.entries()) expect(actual[i]).toBeCloseTo(share, 12);
}

describe('spread', () => {
  test('without a sign the usual shares stand', () => {
    near(spread(undefined, usual, WORDS), [0.5, 0.3, 0.2]);
    near(spread({}, usual, WORDS), [0.5, 0.3, 0.2]);
  });

  test('unlisted values share what is left, in proportion to their usual shares', () => {
    near(spread({ a: 'mostly' }, usual, WORDS), [0.8, 0.2 * 0.6, 0.2 * 0.4]);
    near(spread({ c: 'seldom' }, usual, WORDS), [0.9 * (5 / 8), 0.9 * (3 / 8), 0.1]);
  });

  test('with all values listed the words stand as they are', () => {
    near(spread({ a: 'seldom', b: 'mostly', c: 'seldom' }, usual, WORDS), [0.1, 0.8, 0.1]);
  });

  test('keeps the order of the values, whatever the order of the sign', () => {
    near(spread({ c: 'mostly', a: 'seldom' }, usual, WORDS), [0.1, 0.1, 0.8]);
  });

  test('a value that would be impossible gets the floor, and the sum is brought back to 1', () => {
    const whole = 1 + 2 * FLOOR;
    near(spread({ a: 'none', b: 'none' }, usual, WORDS), [FLOOR / whole, FLOOR / whole, 1 / whole]);
  });

  test('a value that is never usual and not listed gets the floor', () => {
    const rare = new Map([
      ['a', 0.5],
      ['b', 0.5],
      ['c', 0],
    ]);
    near(spread({ a: 'mostly' }, rare, WORDS), [0.8 / 1.005, 0.2 / 1.005, 0.005 / 1.005]);
  });

  test('refuses a word that the rule base does not know', () => {
    expect(() => spread({ a: 'oftenish' }, usual, WORDS)).toThrow('oftenish');
  });

  const weights = fc.array(fc.nat(100), { minLength: 2, maxLength: 7 }).filter((list) => total(list) > 0);
  test('sums to 1, and no value falls below the floor of the whole', () => {
    fc.assert(
      fc.property(weights, fc.array(fc.nat(100), { maxLength: 7 }), (usualWeights, listed) => {
        const whole = total(usualWeights);
        const values = new Map(usualWeights.map((weight, i) => [`v${i}`, weight / whole]));
        // Words for some of the values; the rest of their weights is room for the others.
        const spoken = listed.slice(0, usualWeights.length);
        const share = Math.max(1, total(spoken)) * (spoken.length === usualWeights.length ? 1 : 1.25);
        const words = Object.fromEntries(spoken.map((weight, i) => [`w${i}`, weight / share]));
        const sign = Object.fromEntries(spoken.map((_, i) => [`v${i}`, `w${i}`]));
        const shares = spread(sign, values, words);
        expect(total(shares)).toBeCloseTo(1, 12);
        const least = FLOOR / (1 + values.size * FLOOR);
        for (const one of shares) expect(one).toBeGreaterThanOrEqual(least - 1e-15);
      }),
    );
  });
});

test('floored leaves shares above the floor in proportion', () => {
  const [a = 0, b = 0] = floored([0.6, 0.3, 0]);
  expect(a / b).toBeCloseTo(2, 12);
});
