import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../src/ranking/model.js';
import { confusablePairs, expectedWeight } from '../../../src/ranking/review/confusable.js';
import { cause, finding, question, ruleBase } from '../literals.js';

const shares = fc
  .array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 2, maxLength: 5 })
  .map((row) => {
    const sum = row.reduce((total, one) => total + one, 0);
    return row.map((one) => one / sum);
  });

describe('the expected weight of evidence', () => {
  it('is never below nothing (Gibbs), and nothing between equals', () => {
    fc.assert(
      fc.property(shares, shares, (own, other) => {
        expect(expectedWeight(own, own)).toBeCloseTo(0, 9);
        if (own.length === other.length) expect(expectedWeight(own, other)).toBeGreaterThan(-1e-9);
      }),
    );
  });

  // Worked by hand: 0.9·10·log10(9) + 0.1·10·log10(1/9) = 7.634.
  it('is 7.6 decibans for nine to one against one to nine', () => {
    expect(expectedWeight([0.9, 0.1], [0.1, 0.9])).toBeCloseTo(7.634, 3);
  });
});

const light = finding('light', 'look', { lit: 0.8, dark: 0.2 });
const rules = (...signs: readonly Record<string, Record<string, string>>[]) =>
  ruleBase({
    questions: [
      question('look', {
        answer: {
          type: 'choice',
          choices: [
            { id: 'lit', title: 'lit' },
            { id: 'dark', title: 'dark' },
          ],
        },
      }),
    ],
    findings: [light],
    causes: signs.map((one, at) => cause(`cause-${at}`, { signs: one })),
  });

describe('pairs that no step tells apart', () => {
  it('are those with the same signs', () => {
    const base = rules({}, {}, { light: { dark: 'always' } });
    expect(confusablePairs(base, modelOf(base)).map(({ causes }) => causes)).toEqual([
      ['cause-0', 'cause-1'],
    ]);
  });

  it('are fewer where less is asked of a step', () => {
    const base = rules({ light: { dark: 'mostly' } }, { light: { dark: 'half' } });
    const [pair] = confusablePairs(base, modelOf(base));
    expect(pair?.finding).toBe('light');
    expect(confusablePairs(base, modelOf(base), (pair?.decibans ?? 0) - 0.01)).toEqual([]);
  });

  it('are not told apart by what nobody can be asked', () => {
    const base = rules({ light: { dark: 'always' } }, { light: { lit: 'always' } });
    const silent = { ...base, findings: [{ ...light, asks: [] }] };
    expect(confusablePairs(base, modelOf(base))).toEqual([]);
    expect(confusablePairs(silent, modelOf(silent))).toHaveLength(1);
  });
});
