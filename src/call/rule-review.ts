import { modelOf } from '../ranking/model.js';
import { review } from '../ranking/review/review.js';
import { inOrder, type RuleFault } from '../rulebase/fault.js';
import type { RuleBase } from '../rulebase/records.js';
import { type Sources, sourcesOf } from '../rulebase/sources.js';
import { reviewByCalls } from './rehearsal/review-by-calls.js';

/** What a rule base rests on, for a face to print. */
export function restsOn(rules: RuleBase): Sources {
  return sourcesOf(rules);
}

/**
 * The faults of a rule base that loads, with those that only show when its records work together; and, with `calls`
 * over 0, in so many rehearsed calls.
 */
export async function reviewed(
  faults: readonly RuleFault[],
  rules: RuleBase,
  digest: string,
  calls: number,
): Promise<readonly RuleFault[]> {
  const byCalls = calls === 0 ? [] : await reviewByCalls(rules, digest, calls);
  return inOrder([...faults, ...review(rules, modelOf(rules)), ...byCalls]);
}
