import type { CauseId } from '../../rulebase/records.js';
import type { FindingModel, Model } from '../model.js';

/** A cause that leads whatever is answered in favour of another. */
export interface NeverFirst {
  readonly cause: CauseId;
  readonly leader: CauseId;
}

/**
 * Causes that cannot come first even where every finding reads as well for them as it can. Values are picked one
 * finding after the other, each against what leads so far, so a cause that can lead may rarely be missed.
 */
export function neverFirst(model: Model): readonly NeverFirst[] {
  const findings = [...model.findings.values()].filter(({ id, group }) => id === group);
  return model.hypotheses.flatMap(({ id, kind }, at) => {
    if (kind !== 'cause') return [];
    const weights = findings.reduce<readonly number[]>(
      (before, finding) => bestFor(finding, before, at),
      model.hypotheses.map(({ prior }) => prior),
    );
    const lead = weights.indexOf(Math.max(...weights));
    return lead === at ? [] : [{ cause: id, leader: model.hypotheses[lead]?.id ?? '' }];
  });
}

/** The weights after the value of this finding that is best for one hypothesis; brought back to a sum of 1. */
function bestFor({ shares }: FindingModel, weights: readonly number[], at: number): readonly number[] {
  let best = weights;
  for (const row of shares) {
    const after = weights.map((weight, h) => weight * (row[h] ?? 0));
    const sum = after.reduce((total, weight) => total + weight, 0);
    const scaled = after.map((weight) => weight / sum);
    if ((scaled[at] ?? 0) > (best[at] ?? 0)) best = scaled;
  }
  return best;
}
