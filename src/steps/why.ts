import type { CauseId, FindingId, ValueId } from '../rulebase/records.js';
import { rowsOf } from './look-ahead.js';
import type { Situation } from './situation.js';

/** What one answer would do to the two causes that a finding tells apart. */
export interface Effect {
  readonly value: ValueId;
  /** Probability of the first and the second cause after it, 0 to 1. */
  readonly first: number;
  readonly second: number;
}

/** Why a finding is worth asking about now. */
export interface Why {
  readonly first: { readonly id: CauseId; readonly now: number };
  readonly second: { readonly id: CauseId; readonly now: number };
  /** By how likely each value is to be heard, likeliest first. */
  readonly effects: readonly Effect[];
}

/** Causes looked at for the pair to show. */
const LOOKED_AT = 24;

/** The two likely causes that a finding separates most, and what each value would do to them, heard by voice. */
export function whyAsk(situation: Situation, finding: FindingId): Why | undefined {
  const { model, probabilities } = situation;
  const layout = model.findings.get(finding);
  const record = situation.rules.findings.find(({ id }) => id === finding);
  if (!layout || !record) return undefined;
  const unanswered = situation.rules.questions.filter(({ id }) => !situation.answers.has(id));
  const shares = rowsOf(situation, record, unanswered);
  const leading = probabilities
    .map((now, h) => ({ now, h, id: model.hypotheses[h]?.id ?? '' }))
    .sort((a, b) => b.now - a.now || (a.id < b.id ? -1 : 1))
    .slice(0, LOOKED_AT);
  const gap = (a: number, b: number): number =>
    shares.reduce((sum, row) => sum + Math.abs((row[a] ?? 0) - (row[b] ?? 0)), 0);
  let best: { first: (typeof leading)[number]; second: (typeof leading)[number]; worth: number } | undefined;
  for (const [i, first] of leading.entries()) {
    for (const second of leading.slice(i + 1)) {
      const worth = gap(first.h, second.h) * Math.min(first.now, second.now);
      if (!best || worth > best.worth) best = { first, second, worth };
    }
  }
  if (!best) return undefined;
  const { first, second } = best;
  const effects = shares.map((row, v) => {
    const chance = row.reduce((sum, share, h) => sum + share * (probabilities[h] ?? 0), 0);
    const after = (one: { now: number; h: number }): number => ((row[one.h] ?? 0) * one.now) / chance;
    return { value: layout.values[v] ?? '', chance, first: after(first), second: after(second) };
  });
  effects.sort((a, b) => b.chance - a.chance || (a.value < b.value ? -1 : 1));
  return {
    first: { id: first.id, now: first.now },
    second: { id: second.id, now: second.now },
    effects: effects.map(({ value, first: a, second: b }) => ({ value, first: a, second: b })),
  };
}
