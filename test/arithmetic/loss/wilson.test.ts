import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packetsFor, wilson } from '../../../src/arithmetic/loss/wilson.js';
import { publishedRow } from '../network-references.js';

type Case = readonly [lost: number, sent: number, low: number, high: number];

const counts = fc
  .integer({ min: 1, max: 5000 })
  .chain((sent) => fc.tuple(fc.integer({ min: 0, max: sent }), fc.constant(sent)));

describe("Wilson's interval", () => {
  // R, prop.test(25, 100, correct = FALSE), as printed on a page about it.
  test('is that of R to every digit printed', () => {
    const row = publishedRow<{ lost: number; sent: number; low: number; high: number }>('l-wilson-r');
    const { low, high } = wilson(row.lost, row.sent);
    expect([low.toFixed(7), high.toFixed(7)]).toEqual([row.low.toFixed(7), row.high.toFixed(7)]);
  });

  // Test cases of a published puzzle, computed there with z = 1.96 in place of 1.959964.
  test.each(publishedRow<readonly Case[]>('l-wilson-cases'))('of %d in %d', (lost, sent, low, high) => {
    const ours = wilson(lost, sent);
    expect(Math.abs(ours.low - low)).toBeLessThan(1e-5);
    expect(Math.abs(ours.high - high)).toBeLessThan(1e-5);
  });

  // Newcombe 1998, Table I, method 3 (from memory).
  test.each(publishedRow<readonly Case[]>('l-wilson-newcombe'))(
    'of %d in %d is that of Newcombe',
    (lost, sent, low, high) => {
      const ours = wilson(lost, sent);
      expect([ours.low.toFixed(4), ours.high.toFixed(4)]).toEqual([low.toFixed(4), high.toFixed(4)]);
    },
  );

  test('contains the share that was counted and stays within nought and one', () => {
    fc.assert(
      fc.property(counts, ([lost, sent]) => {
        const { low, high } = wilson(lost, sent);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(lost / sent);
        expect(high).toBeGreaterThanOrEqual(lost / sent);
      }),
    );
  });

  test('shrinks when more packets lose the same share', () => {
    fc.assert(
      fc.property(counts, fc.integer({ min: 2, max: 20 }), ([lost, sent], times) => {
        const few = wilson(lost, sent);
        const many = wilson(lost * times, sent * times);
        expect(many.high - many.low).toBeLessThan(few.high - few.low);
      }),
    );
  });

  // Wilson 1927: the ends are where (p - x/n)^2 = z^2 p(1 - p)/n.
  test('put back into its own equation, both ends balance', () => {
    fc.assert(
      fc.property(counts, ([lost, sent]) => {
        const { low, high } = wilson(lost, sent);
        for (const end of [low, high]) {
          const left = (end - lost / sent) ** 2;
          expect(left).toBeCloseTo((1.959963984540054 ** 2 * end * (1 - end)) / sent, 9);
        }
      }),
    );
  });

  test('mirrors when lost and received change places', () => {
    fc.assert(
      fc.property(counts, ([lost, sent]) => {
        expect(wilson(sent - lost, sent).low).toBeCloseTo(1 - wilson(lost, sent).high, 12);
      }),
    );
  });

  test.each([
    [5, 4],
    [-1, 4],
    [0, 0],
  ])('refuses %d of %d', (lost, sent) => {
    expect(() => wilson(lost, sent)).toThrow(RangeError);
  });
});

describe('the packets that show a loss of at most so much', () => {
  test.each([0.001, 0.01, 0.05, 0.2])('are just enough for %d', (limit) => {
    const packets = packetsFor(limit);
    expect(wilson(0, packets).high).toBeLessThanOrEqual(limit);
    expect(wilson(0, packets - 1).high).toBeGreaterThan(limit);
  });
});
