import { describe, expect, test } from 'vitest';
import { exactModelOf } from './exact-model.js';
import { optimum } from './optimum.js';
import { policyCost } from './policy-cost.js';
import { randomStart } from './random-model.js';
import { cutRatios, ratioOf, rowOf, withoutWays } from './ratios.js';

const MODELS = 20;
/** Never asking anything comes to 1.07 on the random models and 1.04 on the cuts. */
const NEAR = 1.02;
const starts = Array.from({ length: MODELS }, (_, at) => randomStart(at + 1));
const ours = starts.map(ratioOf);

describe('the steps against the exact optimum', () => {
  test('never beat it and stay near it on random models with places', () => {
    expect(Math.min(...ours)).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(rowOf('ours', ours).mean).toBeLessThanOrEqual(NEAR);
  });

  test('never beat it and stay near it on cuts of the rule base', async () => {
    const ratios = await cutRatios(MODELS);
    expect(ratios).toHaveLength(MODELS);
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(rowOf('ours', ratios).mean).toBeLessThanOrEqual(NEAR);
  });

  test('would take longer if they were chosen as if no way took time', () => {
    const blind = starts.map((start) => {
      const fewest = optimum(exactModelOf(start));
      const minutes = policyCost(start, withoutWays(start.rules));
      expect(minutes).toBeGreaterThanOrEqual(fewest * (1 - 1e-9));
      return minutes / fewest;
    });
    expect(rowOf('blind', blind).mean).toBeGreaterThan(rowOf('ours', ours).mean);
  });
});

test('a row is the mean, the 95th of a hundred, and the worst', () => {
  const ratios = Array.from({ length: 100 }, (_, at) => 100 - at);
  expect(rowOf('row', ratios)).toEqual({ name: 'row', models: 100, mean: 50.5, p95: 95, worst: 100 });
});

test('the same seed gives the same model', () => {
  expect(randomStart(7)).toEqual(randomStart(7));
  expect(randomStart(7).rules).not.toEqual(randomStart(8).rules);
});
