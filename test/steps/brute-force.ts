import type { Manifest } from '../../src/rulebase/manifest.js';
import type { PlaceId } from '../../src/rulebase/records.js';
import type { Try } from '../../src/steps/repair-plan.js';

function way(manifest: Manifest, from: PlaceId, to: PlaceId): number {
  if (from === to || to === 'anywhere') return 0;
  const found = manifest.ways.find((one) => one.from === from && one.to === to);
  if (!found) throw new Error(`no way from ${from} to ${to}`);
  return found.minutes;
}

/**
 * Expected minutes of trying in this order and then sending someone, cause by cause: for each, every try costs its
 * minutes and its way as long as nothing before it has mended that cause.
 */
export function minutesOf(
  probabilities: readonly number[],
  here: PlaceId,
  order: readonly Try[],
  manifest: Manifest,
): number {
  const { labourMinutes, waitDays, minutesPerDay } = manifest.visit;
  return probabilities.reduce((total, probability, cause) => {
    let still = 1;
    let place = here;
    let minutes = 0;
    for (const attempt of order) {
      minutes += still * (attempt.minutes + way(manifest, place, attempt.place));
      if (attempt.place !== 'anywhere') place = attempt.place;
      still *= 1 - (attempt.mends.find(([h]) => h === cause)?.[1] ?? 0);
    }
    return total + probability * (minutes + still * (labourMinutes + waitDays * minutesPerDay));
  }, 0);
}

/** Every order of every choice of these, the empty one included. */
export function ordersOf<T>(items: readonly T[]): readonly (readonly T[])[] {
  return [
    [],
    ...items.flatMap((first) =>
      ordersOf(items.filter((one) => one !== first)).map((rest) => [first, ...rest]),
    ),
  ];
}

/** The fewest expected minutes of any order and any place to stop in it. */
export function fewestMinutes(
  probabilities: readonly number[],
  here: PlaceId,
  tries: readonly Try[],
  manifest: Manifest,
): number {
  return Math.min(...ordersOf(tries).map((order) => minutesOf(probabilities, here, order, manifest)));
}
