import { combinedErrorRate, errorRate } from '../../../src/answers/reliability.js';
import { blur } from '../../../src/ranking/blur.js';
import type { Model } from '../../../src/ranking/model.js';
import type { Finding, RuleBase } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { preparedOf } from './prepared.js';

/** P′(value | hypothesis) of a finding whose answers are all said, by value; and by hypothesis its entropy in bits. */
interface Rows {
  readonly rows: readonly Float64Array[];
  readonly entropies: Float64Array;
}

const ROWS = new WeakMap<Model, Map<string, Rows>>();

/** Worked out once for a finding of a model. */
function rowsOf({ rules, model }: Pick<Situation, 'rules' | 'model'>, finding: Finding): Rows {
  const known = ROWS.get(model) ?? new Map<string, Rows>();
  ROWS.set(model, known);
  const fresh = known.get(finding.id) ?? laidOut(rules, model, finding);
  known.set(finding.id, fresh);
  return fresh;
}

function laidOut(rules: RuleBase, model: Model, { id, asks }: Finding): Rows {
  const { questions } = preparedOf(rules);
  const leanings = asks.flatMap((one) => {
    const question = questions.get(one);
    return question ? [{ rate: errorRate(rules.manifest.reliability, question, 'said', false) }] : [];
  });
  const shares = model.findings.get(id)?.shares ?? [];
  const rate = combinedErrorRate(leanings);
  const rows = shares.map((row) => Float64Array.from(row, (share) => blur(share, rate, shares.length)));
  const entropies = Float64Array.from(model.hypotheses, (_, h) => entropy(rows.map((row) => row[h] ?? 0)));
  return { rows, entropies };
}

/**
 * Bits that a finding says about which hypothesis it is (mutual information: Shannon 1948). `weights` by
 * hypothesis; they need not sum to 1.
 */
export function bitsOnCause(situation: Situation, finding: Finding, weights: ArrayLike<number>): number {
  const { rows, entropies } = rowsOf(situation, finding);
  const all = sum(weights);
  return all > 0 ? entropy(rows.map((row) => dot(row, weights) / all)) - dot(entropies, weights) / all : 0;
}

/** Bits that a finding says about on which of two sides it is. `sides`: the weights of either, by hypothesis. */
export function bitsOnSide(
  situation: Situation,
  finding: Finding,
  sides: readonly ArrayLike<number>[],
): number {
  const { rows } = rowsOf(situation, finding);
  const masses = sides.map(sum);
  const all = sum(masses);
  const byValue = rows.map((row) => sides.reduce((total, side) => total + dot(row, side), 0) / all);
  const within = sides.map((side, at) => {
    const mass = masses[at] ?? 0;
    return mass > 0 ? (mass / all) * entropy(rows.map((row) => dot(row, side) / mass)) : 0;
  });
  return entropy(byValue) - sum(within);
}

function entropy(shares: readonly number[]): number {
  return -shares.reduce((total, share) => total + (share > 0 ? share * Math.log2(share) : 0), 0);
}

function dot(a: Float64Array, b: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += (a[i] ?? 0) * (b[i] ?? 0);
  return total;
}

function sum(numbers: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < numbers.length; i++) total += numbers[i] ?? 0;
  return total;
}
