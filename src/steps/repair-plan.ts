import type { Manifest } from '../rulebase/manifest.js';
import type { PlaceId, RemedyId } from '../rulebase/records.js';
import { layoutOf } from './try-layout.js';
import { placeAfter, visitMinutes, wayMinutes } from './ways.js';

/** A remedy that may be tried now, laid out for the sums. */
export interface Try {
  readonly remedy: RemedyId;
  readonly place: PlaceId;
  /** Its minutes, with those of gate questions still to be asked and the price of a try, without the way. */
  readonly minutes: number;
  /** Hypothesis (by its place in the model) and the chance that this mends it. */
  readonly mends: readonly (readonly [number, number])[];
}

export interface RepairPlan {
  /** Expected minutes until the picture is back, the visit at the end included. */
  readonly minutes: number;
  /** What to try, in order, before someone is sent. */
  readonly order: readonly Try[];
}

/** Trying for less than this share of what may be wrong is not worth a line in the plan. */
const LEAST_CHANCE = 1e-4;
/** Differences below this, of the whole, are noise of the sum: ties fall by id. */
const NOISE = 1e-9;

/**
 * A good order of remedies by the greedy rule chance ÷ (minutes + way from here), cut where sending someone
 * becomes cheaper (expected cost of repair: Heckerman, Breese, Rommelse 1995; the ratio rule: Kadane, Simon 1977).
 * `probabilities` in the model's order; they need not sum to 1.
 */
export function greedyPlan(
  probabilities: ArrayLike<number>,
  here: PlaceId,
  tries: readonly Try[],
  manifest: Manifest,
): RepairPlan {
  const layout = layoutOf(tries, probabilities.length, manifest);
  const { from, hypothesis, share, mendedFrom, menders, shares, unmended } = layout;
  const left = Float64Array.from(probabilities);
  const chances = new Float64Array(tries.length);
  let open = tries.length;
  const still = Int32Array.from(tries.keys());
  let alive = 0;
  let beyond = 0;
  for (let h = 0; h < left.length; h++) {
    alive += left[h] ?? 0;
    beyond += (left[h] ?? 0) * (unmended[h] ?? 1);
  }
  for (let at = 0; at < tries.length; at++) {
    for (let i = from[at] ?? 0; i < (from[at + 1] ?? 0); i++) {
      chances[at] = (chances[at] ?? 0) + (left[hypothesis[i] ?? 0] ?? 0) * (share[i] ?? 0);
    }
  }
  const visit = visitMinutes(manifest);
  const order: Try[] = [];
  const least = LEAST_CHANCE * alive;
  let spent = 0;
  let place = here;
  let best = { minutes: alive * visit, length: 0 };
  // Whatever else is tried, no less will be spent than now, and a visit is due for what no remedy mends.
  const never = beyond * visit;
  while (open > 0 && spent + never < best.minutes) {
    const costs = layout.costsFrom(place);
    let next = -1;
    let kept = 0;
    for (let k = 0; k < open; k++) {
      const at = still[k] ?? 0;
      const chance = chances[at] ?? 0;
      // A chance only shrinks as others are tried, so this one is done with.
      if (chance < least) continue;
      still[kept++] = at;
      const isBetter =
        next < 0 || chance * (costs[next] ?? 0) > (chances[next] ?? 0) * (costs[at] ?? 0) * (1 + NOISE);
      if (isBetter) next = at;
    }
    open = kept;
    const attempt = tries[next];
    if (!attempt) break;
    order.push(attempt);
    open = without(still, open, next);
    const chance = chances[next] ?? 0;
    spent += alive * (costs[next] ?? 0);
    for (let i = from[next] ?? 0; i < (from[next + 1] ?? 0); i++) {
      const h = hypothesis[i] ?? 0;
      const mended = (left[h] ?? 0) * (share[i] ?? 0);
      left[h] = (left[h] ?? 0) - mended;
      for (let j = mendedFrom[h] ?? 0; j < (mendedFrom[h + 1] ?? 0); j++) {
        const other = menders[j] ?? 0;
        chances[other] = (chances[other] ?? 0) - mended * (shares[j] ?? 0);
      }
    }
    alive -= chance;
    place = placeAfter(manifest, place, attempt.place);
    const minutes = spent + alive * visit;
    if (minutes < best.minutes * (1 - NOISE)) best = { minutes, length: order.length };
  }
  return { minutes: best.minutes, order: order.slice(0, best.length) };
}

/** Takes one out of the first `open`, the others keeping their order; gives how many are left. */
function without(list: Int32Array, open: number, one: number): number {
  let kept = 0;
  for (let k = 0; k < open; k++) {
    const at = list[k] ?? 0;
    if (at !== one) list[kept++] = at;
  }
  return kept;
}

/** Takes out of what is left of each hypothesis what this mends. */
function mend(left: number[], attempt: Try): void {
  for (const [h, chance] of attempt.mends) left[h] = (left[h] ?? 0) * (1 - chance);
}

function afterAll(probabilities: readonly number[], tries: readonly Try[]): readonly number[] {
  const left = [...probabilities];
  for (const attempt of tries) mend(left, attempt);
  return left;
}

function massLeft(left: readonly number[]): number {
  return left.reduce((sum, p) => sum + p, 0);
}

/** The chance that this brings the picture back, given what is left of each hypothesis. */
export function chanceOf(attempt: Try, left: readonly number[]): number {
  return attempt.mends.reduce((sum, [h, chance]) => sum + (left[h] ?? 0) * chance, 0);
}

/** How many remedies the exact order is worked out for. */
export const EXACT_SIZE = 8;

/**
 * The best order of the most promising remedies, ways and visit included: exact dynamic programming over subsets
 * (Bellman's principle; what is left after a set of remedies does not depend on their order).
 */
export function exactPlan(
  probabilities: readonly number[],
  here: PlaceId,
  tries: readonly Try[],
  manifest: Manifest,
): RepairPlan {
  const chosen = shortlist(probabilities, here, tries, manifest);
  const alive = aliveAfter(probabilities, chosen);
  const full = (1 << chosen.length) - 1;
  const visit = visitMinutes(manifest);
  const memo = new Map<string, { readonly minutes: number; readonly next: number }>();
  const from = (done: number, place: PlaceId): { readonly minutes: number; readonly next: number } => {
    const key = `${done} ${place}`;
    const known = memo.get(key);
    if (known) return known;
    const mass = alive[done] ?? 0;
    let best = { minutes: mass * visit, next: -1 };
    for (let i = 0; done !== full && i < chosen.length; i++) {
      const attempt = chosen[i];
      if (!attempt || done & (1 << i)) continue;
      const now = mass * (attempt.minutes + wayMinutes(manifest, place, attempt.place));
      const minutes = now + from(done | (1 << i), placeAfter(manifest, place, attempt.place)).minutes;
      if (minutes < best.minutes * (1 - NOISE)) best = { minutes, next: i };
    }
    memo.set(key, best);
    return best;
  };
  const order: Try[] = [];
  let done = 0;
  let place = here;
  for (let step = from(done, place); step.next >= 0; step = from(done, place)) {
    const attempt = chosen[step.next];
    if (!attempt) break;
    order.push(attempt);
    done |= 1 << step.next;
    place = placeAfter(manifest, place, attempt.place);
  }
  return { minutes: from(0, here).minutes, order };
}

/** The greedy order's first remedies, filled up with the likeliest others; by id, so that ties fall the same way. */
function shortlist(
  p: readonly number[],
  here: PlaceId,
  tries: readonly Try[],
  manifest: Manifest,
): readonly Try[] {
  const greedy = greedyPlan(p, here, tries, manifest).order;
  const least = LEAST_CHANCE * massLeft(p);
  const rest = tries
    .filter((attempt) => !greedy.includes(attempt) && chanceOf(attempt, p) >= least)
    .sort(
      (a, b) => chanceOf(b, p) / b.minutes - chanceOf(a, p) / a.minutes || (a.remedy < b.remedy ? -1 : 1),
    );
  return [...greedy, ...rest].slice(0, EXACT_SIZE).sort((a, b) => (a.remedy < b.remedy ? -1 : 1));
}

function aliveAfter(probabilities: readonly number[], chosen: readonly Try[]): readonly number[] {
  const alive: number[] = [];
  for (let done = 0; done < 1 << chosen.length; done++) {
    const tried = chosen.filter((_, i) => done & (1 << i));
    alive.push(massLeft(afterAll(probabilities, tried)));
  }
  return alive;
}

/** The better of the exact order of a few and the greedy order of all: the few may leave out too much. */
export function bestPlan(
  probabilities: readonly number[],
  here: PlaceId,
  tries: readonly Try[],
  manifest: Manifest,
): RepairPlan {
  const exact = exactPlan(probabilities, here, tries, manifest);
  const greedy = greedyPlan(probabilities, here, tries, manifest);
  return greedy.minutes < exact.minutes - 1e-9 ? greedy : exact;
}
