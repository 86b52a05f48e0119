import { combinedErrorRate, errorRate } from '../../../src/answers/reliability.js';
import { blur } from '../../../src/ranking/blur.js';
import type { Model } from '../../../src/ranking/model.js';
import type { Finding, RuleBase } from '../../../src/rulebase/records.js';
import { preparedOf } from './prepared.js';

/** P′(value | hypothesis) of a finding whose answers are all said: by value, then by hypothesis. */
type Rows = readonly Float64Array[];

const ROWS = new WeakMap<Model, Map<string, Rows>>();

/** The rows of a finding; worked out once for a model. */
function rowsOf(rules: RuleBase, model: Model, { id, asks }: Finding): Rows {
  const known = ROWS.get(model) ?? new Map<string, Rows>();
  ROWS.set(model, known);
  const before = known.get(id);
  if (before) return before;
  const { questions } = preparedOf(rules);
  const rate = combinedErrorRate(
    asks.flatMap((one) => {
      const question = questions.get(one);
      return question ? [{ rate: errorRate(rules.manifest.reliability, question, 'said', false) }] : [];
    }),
  );
  const shares = model.findings.get(id)?.shares ?? [];
  const rows = shares.map((row) => Float64Array.from(row, (share) => blur(share, rate, shares.length)));
  known.set(id, rows);
  return rows;
}

/**
 * Bits that a finding says about which of these classes is there (mutual information: Shannon 1948). `classOf`
 * by hypothesis: 0, 1, ... below `classes`; one below 0 is left out. The weights need not sum to 1.
 */
export function bits(
  {
    rules,
    model,
    probabilities,
  }: { readonly rules: RuleBase; readonly model: Model; readonly probabilities: readonly number[] },
  finding: Finding,
  classOf: Int32Array,
  classes: number,
): number {
  const rows = rowsOf(rules, model, finding);
  const joint = new Float64Array(rows.length * classes);
  rows.forEach((row, v) => {
    for (let h = 0; h < row.length; h++) {
      const at = classOf[h] ?? -1;
      if (at >= 0)
        joint[v * classes + at] = (joint[v * classes + at] ?? 0) + (row[h] ?? 0) * (probabilities[h] ?? 0);
    }
  });
  return informationIn(joint, rows.length, classes);
}

function informationIn(joint: Float64Array, values: number, classes: number): number {
  const byValue = new Float64Array(values);
  const byClass = new Float64Array(classes);
  let total = 0;
  for (let v = 0; v < values; v++) {
    for (let c = 0; c < classes; c++) {
      const share = joint[v * classes + c] ?? 0;
      byValue[v] = (byValue[v] ?? 0) + share;
      byClass[c] = (byClass[c] ?? 0) + share;
      total += share;
    }
  }
  if (total <= 0) return 0;
  const all = plogp(joint) - plogp(byValue) - plogp(byClass);
  return Math.max(0, all / total + Math.log2(total));
}

function plogp(weights: Float64Array): number {
  let sum = 0;
  for (const weight of weights) if (weight > 0) sum += weight * Math.log2(weight);
  return sum;
}
