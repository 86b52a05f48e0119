import type { FindingId, ValueId } from '../rulebase/records.js';
import { blur } from './blur.js';
import type { Model } from './model.js';

/** A finding that is known: its value, and the chance that an answer it rests on is wrong. */
export interface Evidence {
  readonly finding: FindingId;
  readonly value: ValueId;
  readonly errorRate: number;
}

/** P′(value | hypothesis) for each hypothesis in the model's order; `undefined` for a finding or value unknown to it. */
export function likelihoods(model: Model, evidence: Evidence): readonly number[] | undefined {
  const finding = model.findings.get(evidence.finding);
  const row = finding?.shares[finding.values.indexOf(evidence.value)];
  return finding && row?.map((share) => blur(share, evidence.errorRate, finding.values.length));
}

/** The finding that counts in place of one that repeats it. */
export interface Repeat {
  readonly evidence: Evidence;
  readonly counted: FindingId;
}

/**
 * Of findings that say the same thing the first counts: the repeated one itself, then its repeats by id.
 * Counting them all would make one observation weigh several times.
 */
export function withoutRepeats(
  model: Model,
  evidence: readonly Evidence[],
): { readonly counted: readonly Evidence[]; readonly repeats: readonly Repeat[] } {
  const groupOf = (id: FindingId): FindingId => model.findings.get(id)?.group ?? id;
  const inOrder = [...evidence].sort(
    (a, b) => rank(a.finding, groupOf) - rank(b.finding, groupOf) || compare(a, b),
  );
  const first = new Map<FindingId, FindingId>();
  const counted: Evidence[] = [];
  const repeats: Repeat[] = [];
  for (const one of inOrder) {
    const group = groupOf(one.finding);
    const earlier = first.get(group);
    if (earlier === undefined) {
      first.set(group, one.finding);
      counted.push(one);
    } else repeats.push({ evidence: one, counted: earlier });
  }
  return { counted, repeats };
}

function rank(id: FindingId, groupOf: (id: FindingId) => FindingId): number {
  return groupOf(id) === id ? 0 : 1;
}

function compare(a: Evidence, b: Evidence): number {
  return a.finding < b.finding ? -1 : a.finding > b.finding ? 1 : 0;
}
