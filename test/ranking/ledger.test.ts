import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Evidence, withoutRepeats } from '../../src/ranking/evidence.js';
import { ledger } from '../../src/ranking/ledger.js';
import { posterior } from '../../src/ranking/posterior.js';
import { modelAndEvidence, modelWith } from './models.js';
import { published } from './published.js';

const table = { yes: [0.8, 0.2], no: [0.2, 0.8] };
const model = modelWith(
  { a: 0.5, b: 0.5 },
  { light: table, lamp: table, port: { yes: [0.5, 0.25], no: [0.5, 0.75] } },
  { lamp: 'light' },
);
const shows = (finding: string, value = 'yes'): Evidence => ({ finding, value, errorRate: 0 });

describe('the ledger', () => {
  test('with two causes gives each finding its likelihood ratio in decibans (Good 1950)', () => {
    const db = published<Record<string, number>>('i-deciban-table');
    const entries = ledger(model, [shows('port'), shows('light')], 'a');
    expect(entries.map(({ evidence }) => evidence.finding)).toEqual(['light', 'port']);
    expect(entries[0]?.weight).toBeCloseTo(db['4'] ?? Number.NaN, 4);
    expect(entries[1]?.weight).toBeCloseTo(db['2'] ?? Number.NaN, 4);
    expect(ledger(model, [shows('light')], 'b')[0]?.weight).toBeCloseTo(db['0.25'] ?? Number.NaN, 4);
  });

  test('is what leaving each finding out does to the odds, whatever the model', () => {
    fc.assert(
      fc.property(modelAndEvidence, fc.nat(5), ({ model: any, evidence }, pick) => {
        const at = pick % any.hypotheses.length;
        const cause = any.hypotheses[at]?.id ?? '';
        const { counted } = withoutRepeats(any, evidence);
        const logOdds = (known: readonly Evidence[]): number => {
          const p = posterior(any, known)[at] ?? 0;
          return 10 * Math.log10(p / (1 - p));
        };
        const entries = ledger(any, evidence, cause);
        expect(entries.length).toBe(evidence.length);
        for (const { evidence: one, weight, repeats } of entries) {
          const without = counted.filter(({ finding }) => finding !== one.finding);
          expect(weight).toBeCloseTo(repeats === undefined ? logOdds(counted) - logOdds(without) : 0, 6);
        }
      }),
    );
  });

  test('does not depend on the order in which things were asked', () => {
    const shuffled = modelAndEvidence.chain((both) =>
      fc
        .shuffledSubarray([...both.evidence], { minLength: both.evidence.length })
        .map((other) => ({ ...both, other })),
    );
    fc.assert(
      fc.property(shuffled, ({ model: any, evidence, other }) => {
        expect(ledger(any, other, 'h0')).toEqual(ledger(any, evidence, 'h0'));
      }),
    );
  });

  test('puts the largest weight first, for or against, and ties by finding', () => {
    const tied = modelWith(
      { a: 0.5, b: 0.5 },
      { z: table, y: table, x: { yes: [0.1, 0.9], no: [0.9, 0.1] } },
    );
    const entries = ledger(tied, [shows('z'), shows('y'), shows('x')], 'a');
    expect(entries.map(({ evidence }) => evidence.finding)).toEqual(['x', 'y', 'z']);
    expect(entries[0]?.weight).toBeLessThan(0);
  });

  test('names what repeats another, weighing nothing, after all that counts', () => {
    const entries = ledger(model, [shows('lamp'), shows('light'), shows('port', 'no')], 'a');
    expect(entries.map(({ evidence, repeats }) => [evidence.finding, repeats])).toEqual([
      ['light', undefined],
      ['port', undefined],
      ['lamp', 'light'],
    ]);
    expect(entries[2]?.weight).toBe(0);
  });

  test('looks at what tried remedies left', () => {
    const three = modelWith(
      { a: 0.4, b: 0.3, c: 0.3 },
      { light: { yes: [0.8, 0.2, 0.8], no: [0.2, 0.8, 0.2] } },
    );
    // With c struck the ratio is 4 against b alone.
    expect(ledger(three, [shows('light')], 'a', new Map([['c', 0]]))[0]?.weight).toBeCloseTo(6.0206, 4);
    expect(ledger(three, [shows('light')], 'a')[0]?.weight).toBeLessThan(3);
  });

  test('is empty for a cause the model does not hold', () => {
    expect(ledger(model, [shows('light')], 'stranger')).toEqual([]);
  });
});
