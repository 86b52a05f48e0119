import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blur } from '../../src/ranking/blur.js';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const values = fc.integer({ min: 2, max: 8 });

describe('blur, the symmetric channel with K values', () => {
  test('an answer that is never wrong leaves the share as it is', () => {
    fc.assert(
      fc.property(share, values, (p, k) => {
        expect(blur(p, 0, k)).toBe(p);
      }),
    );
  });

  test('at a rate of (K - 1)/K every value is as likely as another', () => {
    fc.assert(
      fc.property(share, values, (p, k) => {
        expect(blur(p, (k - 1) / k, k)).toBeCloseTo(1 / k, 12);
      }),
    );
  });

  test('mixes the right value with the wrong ones', () => {
    // 0.9 x 0.8 said rightly, and half of 0.1 x 0.2 said wrongly of the two other values.
    expect(blur(0.8, 0.1, 3)).toBeCloseTo(0.9 * 0.8 + (0.1 * 0.2) / 2, 12);
  });

  test('sums to 1 over the values of a finding', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 2, maxLength: 8 }),
        share,
        (weights, rate) => {
          const whole = weights.reduce((sum, one) => sum + one, 0);
          const blurred = weights.map((one) => blur(one / whole, rate, weights.length));
          expect(blurred.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('never turns what was said into evidence for the opposite, however unreliable', () => {
    fc.assert(
      fc.property(share, share, share, values, (p, q, rate, k) => {
        const [less, more] = p < q ? [p, q] : [q, p];
        expect(blur(less, rate, k)).toBeLessThanOrEqual(blur(more, rate, k) + 1e-15);
      }),
    );
  });
});
