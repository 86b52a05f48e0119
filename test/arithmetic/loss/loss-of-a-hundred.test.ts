import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lossOfAHundred } from '../../../src/arithmetic/loss/loss-of-a-hundred.js';

const ORDER = ['none', 'some', 'heavy'];

describe('what a hundred pings tell', () => {
  // Wilson's interval of 1 of 100 begins at 0.18 %, of 2 of 100 at 0.55 %, of 33 of 100 at 24.6 % (worked by hand from the formula).
  it.each([
    [0, 'none'],
    [1, 'none'],
    [2, 'some'],
    [32, 'some'],
    [33, 'heavy'],
    [100, 'heavy'],
  ])('takes %i lost as %s', (lost, size) => {
    expect(lossOfAHundred(lost).value).toBe(size);
  });

  it('never calls more loss less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), (lost) => {
        const [less, more] = [lossOfAHundred(lost).value, lossOfAHundred(lost + 1).value];
        expect(ORDER.indexOf(more)).toBeGreaterThanOrEqual(ORDER.indexOf(less));
      }),
    );
  });

  it('writes out what the count allows, not the bare per cent', () => {
    const [line] = lossOfAHundred(4).lines;
    expect(line?.id).toBe('loss.interval');
    expect(JSON.stringify(line?.with)).toContain('9.8');
  });
});
