import type { Manifest } from '../rulebase/manifest.js';
import type { PlaceId } from '../rulebase/records.js';
import type { Try } from './repair-plan.js';
import { wayMinutes } from './ways.js';

/**
 * Remedies laid out flat, for a weighing that is done some hundred times a step: numbers side by side instead of
 * records, worked out once for a list of remedies.
 */
export interface TryLayout {
  /** The mends of remedy i stand from `from[i]` to before `from[i + 1]`: which hypothesis, and the chance. */
  readonly from: Int32Array;
  readonly hypothesis: Int32Array;
  readonly share: Float64Array;
  /** The same by hypothesis: which remedies mend it, and the chance. */
  readonly mendedFrom: Int32Array;
  readonly menders: Int32Array;
  readonly shares: Float64Array;
  /** By hypothesis: the share that is left once all were tried. */
  readonly unmended: Float64Array;
  /** By remedy: its minutes with the way from this place. */
  readonly costsFrom: (place: PlaceId) => Float64Array;
}

const LAYOUTS = new WeakMap<readonly Try[], TryLayout>();

/** The layout of these remedies over so many hypotheses; the same list always means the same manifest. */
export function layoutOf(tries: readonly Try[], hypotheses: number, manifest: Manifest): TryLayout {
  const known = LAYOUTS.get(tries);
  if (known && known.unmended.length === hypotheses) return known;
  const layout = laidOut(tries, hypotheses, manifest);
  LAYOUTS.set(tries, layout);
  return layout;
}

function laidOut(tries: readonly Try[], hypotheses: number, manifest: Manifest): TryLayout {
  const byTry = tries.map(({ mends }) => mends.filter(([h]) => h < hypotheses));
  const byHypothesis = Array.from({ length: hypotheses }, (): (readonly [number, number])[] => []);
  const unmended = new Float64Array(hypotheses).fill(1);
  byTry.forEach((mends, at) => {
    for (const [h, chance] of mends) {
      byHypothesis[h]?.push([at, chance]);
      unmended[h] = (unmended[h] ?? 1) * (1 - chance);
    }
  });
  const costs = new Map<PlaceId, Float64Array>();
  return {
    from: starts(byTry),
    hypothesis: Int32Array.from(byTry.flat().map(([h]) => h)),
    share: Float64Array.from(byTry.flat().map(([, chance]) => chance)),
    mendedFrom: starts(byHypothesis),
    menders: Int32Array.from(byHypothesis.flat().map(([at]) => at)),
    shares: Float64Array.from(byHypothesis.flat().map(([, chance]) => chance)),
    unmended,
    costsFrom: (place) => {
      const known = costs.get(place);
      if (known) return known;
      const fresh = Float64Array.from(
        tries.map((attempt) => attempt.minutes + wayMinutes(manifest, place, attempt.place)),
      );
      costs.set(place, fresh);
      return fresh;
    },
  };
}

function starts(lists: readonly (readonly unknown[])[]): Int32Array {
  const places = new Int32Array(lists.length + 1);
  lists.forEach((list, at) => {
    places[at + 1] = (places[at] ?? 0) + list.length;
  });
  return places;
}
