import type { Manifest } from '../rulebase/manifest.js';
import type { PlaceId } from '../rulebase/records.js';

/** Places that nobody has to walk to. */
const NO_WAY: ReadonlySet<PlaceId> = new Set(['anywhere', 'desk']);

/** Minutes from one place to another, by the manifest; 0 to where one is, or to no place in particular. */
export function wayMinutes(manifest: Manifest, from: PlaceId, to: PlaceId): number {
  const there = placeAfter(manifest, from, to);
  return there === from
    ? 0
    : (manifest.ways.find((way) => way.from === from && way.to === there)?.minutes ?? 0);
}

/** Where the person stands after a step at `to`: what can be done at several places is done where one is, if one may. */
export function placeAfter({ places }: Manifest, from: PlaceId, to: PlaceId): PlaceId {
  if (NO_WAY.has(to)) return from;
  const within = places.find(({ id }) => id === to)?.within;
  return within === undefined ? to : within.includes(from) ? from : (within[0] ?? to);
}

/** What sending someone costs in minutes: labour, and the days of waiting at their price. */
export function visitMinutes({ visit }: Manifest): number {
  return visit.labourMinutes + visit.waitDays * visit.minutesPerDay;
}
