import type { Manifest } from '../rulebase/manifest.js';
import type { PlaceId } from '../rulebase/records.js';

/** Places that nobody has to walk to. */
const NO_WAY: ReadonlySet<PlaceId> = new Set(['anywhere', 'desk']);

/** Minutes from one place to another, by the manifest; 0 to where one is, or to no place in particular. */
export function wayMinutes(manifest: Manifest, from: PlaceId, to: PlaceId): number {
  if (from === to || NO_WAY.has(to)) return 0;
  return manifest.ways.find((way) => way.from === from && way.to === to)?.minutes ?? 0;
}

/** Where the person stands after a step at `to`. */
export function placeAfter(from: PlaceId, to: PlaceId): PlaceId {
  return NO_WAY.has(to) ? from : to;
}

/** What sending someone costs in minutes: labour, and the days of waiting at their price. */
export function visitMinutes({ visit }: Manifest): number {
  return visit.labourMinutes + visit.waitDays * visit.minutesPerDay;
}
