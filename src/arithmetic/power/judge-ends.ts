import type { Judged } from '../judge.js';

/** Every input of a sum at the end that is kindest to the camera, and at the end that is hardest on it. */
export type Ends<S> = { readonly [K in keyof S]: { readonly best: S[K]; readonly worst: S[K] } };

/** How far a margin may be below nought by rounding of doubles alone. */
const ROUNDING = 1e-9;

/** Whether a margin is enough: nought or more. */
export function isEnough(margin: number): boolean {
  return margin >= 0 - ROUNDING;
}

export function kindestOf<S extends object>(ends: Ends<S>): S {
  return endOf(ends, 'best');
}

export function hardestOf<S extends object>(ends: Ends<S>): S {
  return endOf(ends, 'worst');
}

/**
 * As `judge`, for inputs that are not all numbers and too many to try in every corner: each is sorted into its two
 * ends beforehand. Fine only if the margin is enough with every input at its worst, impossible only if it is not with every
 * input at its best. `margin` must not fall when an input moves towards its best end. What decides is the
 * input that alone could turn the verdict both ways, else one way, else the one with the largest swing.
 */
export function judgeEnds<S extends object, K extends keyof S & string>(
  ends: Ends<S>,
  margin: (scenario: S) => number,
  inputs: readonly K[],
): Judged<K> {
  const [best, worst] = [kindestOf(ends), hardestOf(ends)];
  const [high, low] = [margin(best), margin(worst)];
  if (isEnough(low)) return { verdict: 'fine' };
  if (!isEnough(high)) return { verdict: 'impossible' };
  const open = inputs
    .map((key) => {
      const saved = margin({ ...worst, [key]: best[key] });
      const spoilt = margin({ ...best, [key]: worst[key] });
      return { key, turns: turnsOf(saved, spoilt), swing: saved - low + (high - spoilt) };
    })
    .filter(({ swing }) => swing > ROUNDING)
    .sort((a, b) => b.turns - a.turns || b.swing - a.swing);
  const [first] = open;
  return first === undefined ? { verdict: 'doubtful' } : { verdict: 'doubtful', decides: first.key };
}

function turnsOf(saved: number, spoilt: number): number {
  return (isEnough(saved) ? 1 : 0) + (isEnough(spoilt) ? 0 : 1);
}

function endOf<S extends object>(ends: Ends<S>, end: 'best' | 'worst'): S {
  const entries = Object.entries<{ readonly best: unknown; readonly worst: unknown }>(ends);
  return Object.fromEntries(entries.map(([key, value]) => [key, value[end]])) as S;
}
