import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge, worstOf } from '../../src/arithmetic/judge.js';
import { type Between, exactly } from '../../src/values/between.js';

function range(low: number, high: number): Between {
  return { low, high, isGuess: false };
}

/** What is left of `have` after `need`. */
function spare(at: { readonly have: number; readonly need: number }): number {
  return at.have - at.need;
}

describe('a verdict over ranges', () => {
  test('is fine only over the whole range, impossible only over the whole range', () => {
    expect(judge({ have: range(5, 9), need: range(1, 5) }, spare).verdict).toBe('fine');
    expect(judge({ have: range(1, 4), need: range(5, 9) }, spare).verdict).toBe('impossible');
    expect(judge({ have: range(1, 5), need: range(5, 9) }, spare).verdict).toBe('doubtful');
  });

  test('names no deciding input where nothing is in doubt', () => {
    expect(judge({ have: exactly(5), need: exactly(1) }, spare)).toEqual({ verdict: 'fine' });
  });

  test('names the only uncertain input', () => {
    expect(judge({ have: range(1, 9), need: exactly(5) }, spare).decides).toBe('have');
  });

  test('names the input whose ends leave the least doubt, not merely an uncertain one', () => {
    expect(judge({ have: range(1, 90), need: range(5, 6) }, spare).decides).toBe('have');
    expect(judge({ have: range(5, 6), need: range(1, 90) }, spare).decides).toBe('need');
  });

  test('agrees with trying every whole number inside', () => {
    const ends = fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 }));
    fc.assert(
      fc.property(ends, ends, (have, need) => {
        const box = {
          have: range(Math.min(...have), Math.max(...have)),
          need: range(Math.min(...need), Math.max(...need)),
        };
        const spares: number[] = [];
        for (let one = box.have.low; one <= box.have.high; one += 1) {
          for (let other = box.need.low; other <= box.need.high; other += 1) spares.push(one - other);
        }
        const expected = spares.every((it) => it >= 0)
          ? 'fine'
          : spares.every((it) => it < 0)
            ? 'impossible'
            : 'doubtful';
        expect(judge(box, spare).verdict).toBe(expected);
      }),
    );
  });

  test('of several parts is the worst, with the input of the first doubtful one', () => {
    const doubtful = { verdict: 'doubtful', decides: 'wan' } as const;
    expect(worstOf<string>([{ verdict: 'fine' }, doubtful])).toEqual(doubtful);
    expect(worstOf<string>([doubtful, { verdict: 'impossible' }])).toEqual({ verdict: 'impossible' });
    expect(worstOf([{ verdict: 'fine' }])).toEqual({ verdict: 'fine' });
  });
});
