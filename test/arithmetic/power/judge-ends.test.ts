import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Ends, judgeEnds } from '../../../src/arithmetic/power/judge-ends.js';

interface Two {
  readonly metres: number;
  readonly watts: number;
}

/** Enough while metres and watts together stay within 100. */
const margin = ({ metres, watts }: Two): number => 100 - metres - watts;
const ends = (short: number, long: number, small: number, large: number): Ends<Two> => ({
  metres: { best: short, worst: long },
  watts: { best: small, worst: large },
});
const judged = (...numbers: readonly [number, number, number, number]) =>
  judgeEnds<Two, keyof Two>(ends(...numbers), margin, ['metres', 'watts']);

describe('a verdict over ranges', () => {
  test('is fine only if it is fine at the worst, the limit itself included', () => {
    expect(judged(10, 60, 10, 40)).toEqual({ verdict: 'fine' });
    expect(judged(10, 60, 10, 40.1).verdict).toBe('doubtful');
  });

  test('is impossible only if it is so at the best', () => {
    expect(judged(60, 90, 40.1, 50)).toEqual({ verdict: 'impossible' });
    expect(judged(60, 90, 40, 50).verdict).toBe('doubtful');
  });

  test('names the input that could turn it either way', () => {
    expect(judged(10, 95, 10, 20)).toEqual({ verdict: 'doubtful', decides: 'metres' });
    expect(judged(10, 20, 10, 95)).toEqual({ verdict: 'doubtful', decides: 'watts' });
  });

  test('names none where everything that was asked about is known', () => {
    const open: Ends<Two> = ends(10, 10, 80, 95);
    expect(judgeEnds<Two, 'metres'>(open, margin, ['metres'])).toEqual({ verdict: 'doubtful' });
  });

  test('never becomes worse when a range is narrowed', () => {
    const number = fc.double({ min: 0, max: 100, noNaN: true });
    const rank = { fine: 'fine', doubtful: 'doubtful', impossible: 'impossible' } as const;
    fc.assert(
      fc.property(fc.tuple(number, number, number, number), number, ([a, b, c, d], at) => {
        const [short, long] = [Math.min(a, b), Math.max(a, b)];
        const [small, large] = [Math.min(c, d), Math.max(c, d)];
        const wide = judged(short, long, small, large).verdict;
        const known = Math.min(long, Math.max(short, at));
        const narrow = judged(known, known, small, large).verdict;
        if (wide !== 'doubtful') expect(narrow).toBe(rank[wide]);
      }),
      { numRuns: 2_000 },
    );
  });
});
