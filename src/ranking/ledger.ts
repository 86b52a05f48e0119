import type { CauseId, FindingId } from '../rulebase/records.js';
import { decibans, odds } from './decibans.js';
import { type Evidence, withoutRepeats } from './evidence.js';
import type { Model } from './model.js';
import { type Factors, posterior } from './posterior.js';

/** What one finding does to one cause. */
export interface Entry {
  readonly evidence: Evidence;
  /** Decibans for (positive) or against (negative) the cause; 0 for one that repeats another. */
  readonly weight: number;
  /** Set where it repeats another finding, which is counted in its place. */
  readonly repeats?: FindingId;
}

/**
 * The weight of each finding for a cause: 10 × (log₁₀ odds with all findings − log₁₀ odds without this one).
 * It does not depend on the order in which things were asked; entries need not add up.
 * Largest weight first, for or against; ties by finding id. Empty for a cause the model does not hold.
 */
export function ledger(
  model: Model,
  evidence: readonly Evidence[],
  cause: CauseId,
  factors: Factors = new Map(),
): readonly Entry[] {
  const at = model.hypotheses.findIndex((one) => one.id === cause);
  if (at < 0) return [];
  const { counted, repeats } = withoutRepeats(model, evidence);
  const withAll = odds(posterior(model, counted, factors)[at] ?? 0);
  const entries: Entry[] = counted.map((one) => {
    const without = counted.filter((other) => other !== one);
    return { evidence: one, weight: decibans(withAll / odds(posterior(model, without, factors)[at] ?? 0)) };
  });
  entries.sort(
    (a, b) => Math.abs(b.weight) - Math.abs(a.weight) || (a.evidence.finding < b.evidence.finding ? -1 : 1),
  );
  return [
    ...entries,
    ...repeats.map(({ evidence: one, counted: by }) => ({ evidence: one, weight: 0, repeats: by })),
  ];
}
