import type { CauseId } from '../rulebase/records.js';
import { type Evidence, likelihoods, withoutRepeats } from './evidence.js';
import type { Model } from './model.js';

/** Factors that remedies already tried leave on a cause's weight, 0 (struck) to 1. */
export type Factors = ReadonlyMap<CauseId, number>;

/**
 * P(cause | findings) ∝ prior × factor × Π P′(value | cause), summed in logs (Bayes' theorem with findings
 * independent given the cause). Unknown findings say nothing. In the model's order; sums to 1.
 * Should every hypothesis have been struck, the factors are left out rather than dividing nothing.
 * Of a cause that comes and goes, what is seen at this moment counts as seen with the cause there or with
 * nothing wrong, each by its chance, unless it is known which of the two it is (the law of total probability).
 */
export function posterior(
  model: Model,
  evidence: readonly Evidence[],
  factors: Factors = new Map(),
): readonly number[] {
  const logs = model.hypotheses.map(({ id, prior }) => Math.log(prior) + Math.log(factors.get(id) ?? 1));
  if (logs.every((log) => log === Number.NEGATIVE_INFINITY)) return posterior(model, evidence);
  const { counted } = withoutRepeats(model, evidence);
  const { absence } = model;
  const isOpen = absence !== undefined && evidence.every(({ finding }) => finding !== absence.finding);
  const isMomentary = ({ finding }: Evidence) => isOpen && absence.momentary.has(finding);
  const lasting = logsOf(
    model,
    counted.filter((one) => !isMomentary(one)),
  );
  const there = logsOf(model, counted.filter(isMomentary));
  const away = there[model.hypotheses.findIndex(({ kind }) => kind === 'nothing')] ?? 0;
  return normalised(
    logs.map((log, h) => {
      const share = isOpen ? (absence.shares[h] ?? 0) : 0;
      return log + (lasting[h] ?? 0) + blended(there[h] ?? 0, away, share);
    }),
  );
}

/** Π P′(value | hypothesis) for each hypothesis, in logs. */
function logsOf(model: Model, evidence: readonly Evidence[]): readonly number[] {
  const logs = model.hypotheses.map(() => 0);
  for (const one of evidence) {
    const row = rowOf(model, one);
    for (let h = 0; h < row.length; h++) logs[h] = (logs[h] ?? 0) + (row[h] ?? 0);
  }
  return logs;
}

const ROWS = new WeakMap<Model, Map<string, Float64Array>>();

/** The logarithms of a finding's row, worked out once: in a call the same few values come up again and again. */
function rowOf(model: Model, one: Evidence): Float64Array {
  const known = ROWS.get(model) ?? new Map<string, Float64Array>();
  ROWS.set(model, known);
  const key = `${one.finding} ${one.value} ${one.errorRate}`;
  const row = known.get(key) ?? Float64Array.from(likelihoods(model, one) ?? [], Math.log);
  known.set(key, row);
  return row;
}

/** log((1 − share) × eᵃ + share × eᵇ), without leaving the range of numbers. */
function blended(there: number, away: number, share: number): number {
  if (share <= 0) return there;
  const top = Math.max(there, away);
  return top + Math.log((1 - share) * Math.exp(there - top) + share * Math.exp(away - top));
}

/** Weights in logs to shares that sum to 1. */
export function normalised(logs: readonly number[]): readonly number[] {
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
