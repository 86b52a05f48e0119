import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { modelOf } from '../../../src/ranking/model.js';
import { correlatedSite } from './correlated-site.js';
import { perturbedTruth } from './perturbed-truth.js';
import { rules } from './rule-base.js';

const model = modelOf(rules);
const truth = perturbedTruth(model, 5);

describe('the perturbed world', () => {
  it('is the same for the same seed, and another for another', () => {
    expect(perturbedTruth(model, 5)).toEqual(truth);
    expect(perturbedTruth(model, 6)).not.toEqual(truth);
  });

  it('has priors that sum to 1, and rows that do', () => {
    expect(truth.hypotheses.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 12);
    for (const { shares } of truth.findings.values()) {
      truth.hypotheses.forEach((_, h) => {
        expect(shares.reduce((sum, row) => sum + (row[h] ?? 0), 0)).toBeCloseTo(1, 12);
      });
    }
  });

  it('nowhere has the numbers of the rule base', () => {
    for (const [id, { shares }] of truth.findings) {
      const own = model.findings.get(id)?.shares ?? [];
      for (const [v, row] of shares.entries())
        expect(row.some((share, h) => share === own[v]?.[h])).toBe(false);
    }
    expect(truth.hypotheses.some(({ prior }, h) => prior === model.hypotheses[h]?.prior)).toBe(false);
  });

  it('moves priors by log-normal factors of a spread of 0.4', () => {
    const logs = Array.from({ length: 30 }, (_, seed) => perturbedTruth(model, seed + 100)).flatMap(
      ({ hypotheses }) =>
        hypotheses.map(({ prior }, h) => Math.log(prior / (model.hypotheses[h]?.prior ?? 1))),
    );
    const middle = logs.reduce((sum, log) => sum + log, 0) / logs.length;
    const spread = Math.sqrt(logs.reduce((sum, log) => sum + (log - middle) ** 2, 0) / logs.length);
    expect(spread).toBeGreaterThan(0.38);
    expect(spread).toBeLessThan(0.42);
  });
});

describe('a site of that world', () => {
  it('has one value for each finding', () => {
    const site = correlatedSite(rules, truth, 'supply-off', diceOf(1));
    expect(site.hypotheses.map(({ id }) => id)).toEqual(['supply-off']);
    for (const { shares } of site.findings.values())
      expect(shares.map(([share]) => share).sort()).toEqual([...shares.slice(1).map(() => 0), 1]);
  });

  it('has findings of a stage going the way of the first, with the chance of a repeat', () => {
    const sites = Array.from({ length: 400 }, (_, seed) =>
      correlatedSite(rules, truth, 'provider-down', diceOf(seed)),
    );
    /** By site: 1 where it shows its most usual value. */
    const waysOf = (id: string): readonly number[] => {
      const values = rules.findings.find((one) => one.id === id)?.values ?? {};
      const most = Object.entries(values).sort(([, a], [, b]) => b.usual - a.usual)[0]?.[0] ?? '';
      return sites.map(({ findings }) => {
        const layout = findings.get(id);
        return layout?.shares[layout.values.indexOf(most)]?.[0] ?? 0;
      });
    };
    let [together, most] = [0, 0];
    for (const { id: stage } of rules.manifest.stages) {
      const [first = [], ...later] = rules.findings
        .filter((one) => one.stage === stage)
        .map(({ id }) => waysOf(id));
      for (const other of later) together += covariance(first, other);
      most += later.length * covariance(first, first);
    }
    // A follower copies the way with a chance of 0.3, so its covariance is that share of the first one's variance.
    expect(together / most).toBeGreaterThan(0.25);
    expect(together / most).toBeLessThan(0.35);
  });
});

function covariance(a: readonly number[], b: readonly number[]): number {
  const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0) / list.length;
  const [m, n] = [mean(a), mean(b)];
  return mean(a.map((one, at) => (one - m) * ((b[at] ?? 0) - n)));
}
