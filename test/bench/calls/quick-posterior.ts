import { type Evidence, likelihoods, withoutRepeats } from '../../../src/ranking/evidence.js';
import type { Model } from '../../../src/ranking/model.js';
import { type Factors, normalised, posterior } from '../../../src/ranking/posterior.js';

const LOGS = new WeakMap<Model, Map<string, Float64Array>>();

/** What `posterior` gives, to the last bit; the logarithms of a finding's row are worked out once. */
export function quickPosterior(
  model: Model,
  evidence: readonly Evidence[],
  factors: Factors,
): readonly number[] {
  const logs = model.hypotheses.map(({ id, prior }) => Math.log(prior) + Math.log(factors.get(id) ?? 1));
  if (logs.every((log) => log === Number.NEGATIVE_INFINITY)) return posterior(model, evidence, factors);
  for (const one of withoutRepeats(model, evidence).counted) {
    const row = logsOf(model, one);
    for (let h = 0; h < row.length; h++) logs[h] = (logs[h] ?? 0) + (row[h] ?? 0);
  }
  return normalised(logs);
}

function logsOf(model: Model, one: Evidence): Float64Array {
  const known = LOGS.get(model) ?? new Map<string, Float64Array>();
  LOGS.set(model, known);
  const key = `${one.finding} ${one.value} ${one.errorRate}`;
  const row = known.get(key) ?? Float64Array.from(likelihoods(model, one) ?? [], Math.log);
  known.set(key, row);
  return row;
}
