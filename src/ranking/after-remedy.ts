import type { Manifest } from '../rulebase/manifest.js';
import type { CauseId, Remedy } from '../rulebase/records.js';
import type { Factors } from './posterior.js';

/** From this chance on, a remedy that took leaves nothing of the cause it mends. */
export const STRIKES_FROM = 0.8;

export type Took = 'yes' | 'no' | 'cant-tell';

/**
 * P(c) ∝ P(c)·m(remedy, c): what brought the picture back is one of the things it mends. Where earlier remedies
 * had struck all of those, one of them was struck wrongly, and only this remedy's own chances count.
 */
export function factorsWhenBack(
  manifest: Manifest,
  remedy: Remedy,
  hypotheses: readonly string[],
  before: Factors,
): Factors {
  const chances = chancesOf(manifest, remedy);
  const after = hypotheses.map((id): [CauseId, number] => [
    id,
    (before.get(id) ?? 1) * (chances.get(id) ?? 0),
  ]);
  if (after.some(([, factor]) => factor > 0)) return new Map(after);
  return new Map(hypotheses.map((id) => [id, chances.get(id) ?? 0]));
}

/**
 * The picture is still dark. If the check shows that the remedy took, the causes it surely mends are struck;
 * any other it may mend loses weight by 1 − m, as all do where it did not take or nobody could tell.
 */
export function factorsWhenStillDark(
  manifest: Manifest,
  remedy: Remedy,
  took: Took,
  before: Factors,
): Factors {
  const after = new Map(before);
  for (const [cause, chance] of chancesOf(manifest, remedy)) {
    const factor = took === 'yes' && chance >= STRIKES_FROM ? 0 : 1 - chance;
    after.set(cause, (after.get(cause) ?? 1) * factor);
  }
  return after;
}

function chancesOf(manifest: Manifest, remedy: Remedy): ReadonlyMap<string, number> {
  return new Map(remedy.mends.map(({ cause, chance }) => [cause, manifest.words[chance] ?? 0]));
}
