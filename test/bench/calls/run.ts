import type { RuleBase } from '../../../src/rulebase/records.js';
import { type CallsWanted, heldCalls } from './held-calls.js';
import { type Row, rowsOf } from './rows.js';

/** One row a policy for so many calls with invented callers, all in this process. */
export function benchCalls(rules: RuleBase, wanted: CallsWanted): readonly Row[] {
  return rowsOf(heldCalls(rules, wanted));
}
