import type { CauseId } from '../rulebase/records.js';
import { type Evidence, likelihoods, withoutRepeats } from './evidence.js';
import type { Model } from './model.js';

/** Factors that remedies already tried leave on a cause's weight, 0 (struck) to 1. */
export type Factors = ReadonlyMap<CauseId, number>;

/**
 * P(cause | findings) ∝ prior × factor × Π P′(value | cause), summed in logs (Bayes' theorem with findings
 * independent given the cause). Unknown findings say nothing. In the model's order; sums to 1.
 * Should every hypothesis have been struck, the factors are left out rather than dividing nothing.
 */
export function posterior(
  model: Model,
  evidence: readonly Evidence[],
  factors: Factors = new Map(),
): readonly number[] {
  const logs = model.hypotheses.map(({ id, prior }) => Math.log(prior) + Math.log(factors.get(id) ?? 1));
  if (logs.every((log) => log === Number.NEGATIVE_INFINITY)) return posterior(model, evidence);
  for (const one of withoutRepeats(model, evidence).counted) {
    likelihoods(model, one)?.forEach((likelihood, h) => {
      logs[h] = (logs[h] ?? 0) + Math.log(likelihood);
    });
  }
  return normalised(logs);
}

/** Weights in logs to shares that sum to 1. */
export function normalised(logs: readonly number[]): readonly number[] {
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
