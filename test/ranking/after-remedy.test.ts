import { describe, expect, test } from 'vitest';
import { factorsWhenBack, factorsWhenStillDark } from '../../src/ranking/after-remedy.js';
import { posterior } from '../../src/ranking/posterior.js';
import { MANIFEST, remedy } from './literals.js';
import { modelWith } from './models.js';

const model = modelWith({ sure: 0.2, half: 0.3, other: 0.5 }, {});
const HYPOTHESES = model.hypotheses.map(({ id }) => id);
const restart = remedy('restart', {
  mends: [
    { cause: 'sure', chance: 'mostly' },
    { cause: 'half', chance: 'half' },
  ],
});
const ranked = (factors: ReadonlyMap<string, number>): readonly number[] =>
  posterior(model, [], factors).map((p) => Number(p.toFixed(6)));

describe('the picture is back', () => {
  test('each cause weighs by how surely the remedy mends it', () => {
    const whole = 0.2 * 0.8 + 0.3 * 0.5;
    expect(ranked(factorsWhenBack(MANIFEST, restart, HYPOTHESES, new Map()))).toEqual([
      Number(((0.2 * 0.8) / whole).toFixed(6)),
      Number(((0.3 * 0.5) / whole).toFixed(6)),
      0,
    ]);
  });

  test('a remedy that mends one thing confirms it', () => {
    const one = remedy('half', { mends: [{ cause: 'half', chance: 'seldom' }] });
    expect(ranked(factorsWhenBack(MANIFEST, one, HYPOTHESES, new Map()))).toEqual([0, 1, 0]);
  });

  test('what earlier remedies left still counts', () => {
    const back = factorsWhenBack(MANIFEST, restart, HYPOTHESES, new Map([['sure', 0]]));
    expect(ranked(back)).toEqual([0, 1, 0]);
  });

  test('had all it mends been struck, it still was one of those', () => {
    const struck = new Map([
      ['sure', 0],
      ['half', 0],
    ]);
    const back = factorsWhenBack(MANIFEST, restart, HYPOTHESES, struck);
    expect(ranked(back)[2]).toBe(0);
    expect(ranked(back)[0]).toBeGreaterThan(0.5);
  });
});

describe('the picture is still dark', () => {
  test('a remedy that took strikes what it surely mends, and weakens the rest by 1 - m', () => {
    const after = factorsWhenStillDark(MANIFEST, restart, 'yes', new Map());
    expect(after.get('sure')).toBe(0);
    expect(after.get('half')).toBe(0.5);
    expect(after.has('other')).toBe(false);
  });

  test.each(['no', 'cant-tell'] as const)('took: %s, all it mends lose weight by 1 - m', (took) => {
    const after = factorsWhenStillDark(MANIFEST, restart, took, new Map([['half', 0.4]]));
    expect(after.get('sure')).toBeCloseTo(0.2, 12);
    expect(after.get('half')).toBeCloseTo(0.2, 12);
  });

  test('leaves the factors it was given alone', () => {
    const before = new Map([['sure', 1]]);
    factorsWhenStillDark(MANIFEST, restart, 'yes', before);
    expect(before).toEqual(new Map([['sure', 1]]));
  });
});
