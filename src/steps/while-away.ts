import { isAway } from '../findings/silent.js';
import { NOTHING } from '../ranking/model.js';
import type { PlaceId } from '../rulebase/records.js';
import { type OpenRemedy, openRemedies } from './open-remedies.js';
import { bestPlan, greedyPlan, type RepairPlan, type Try } from './repair-plan.js';
import type { Situation } from './situation.js';
import { layoutOf } from './try-layout.js';
import { visitMinutes } from './ways.js';

/** From this probability on something is what the call is about: a cause somebody is sent for, or nothing at all. */
const LIKELY = 0.5;
/** Mending less than this, unseen, is not worth a change at the site; judged. */
const WORTH_MENDING_UNSEEN = 0.2;

/**
 * A fault that comes and goes is away, and there is something to look for. Whatever is done now, the picture stays:
 * what mended it shows only later. So one thing is done, and that the picture stays while one watches says nothing.
 */
export function mendsUnseen({ rules, settled, model, probabilities }: Situation): boolean {
  const nothing = probabilities[model.hypotheses.findIndex(({ id }) => id === NOTHING)] ?? 0;
  return isAway(rules, settled) && nothing < LIKELY;
}

/** Whether a remedy only waits: to watch whether the picture stays mends nothing. */
export function onlyWaits({ remedy: { mends } }: OpenRemedy): boolean {
  return mends.every(({ cause }) => cause === NOTHING);
}

/** A quick plan from a place, by these weights; `unseen`: of one remedy only, as nobody sees what it did. */
export function quickPlan(
  situation: Situation,
  unseen: boolean,
  weights: ArrayLike<number>,
  place: PlaceId,
  tries: readonly Try[],
): RepairPlan {
  const { manifest } = situation.rules;
  return unseen ? oneOnly(situation, weights, place, tries) : greedyPlan(weights, place, tries, manifest);
}

function oneOnly(
  { rules: { manifest } }: Situation,
  weights: ArrayLike<number>,
  place: PlaceId,
  tries: readonly Try[],
): RepairPlan {
  const { from, hypothesis, share, costsFrom } = layoutOf(tries, weights.length, manifest);
  const costs = costsFrom(place);
  const visit = visitMinutes(manifest);
  let alive = 0;
  for (let h = 0; h < weights.length; h++) alive += weights[h] ?? 0;
  let best = { minutes: alive * visit, at: -1 };
  for (let at = 0; at < tries.length; at++) {
    let mended = 0;
    for (let i = from[at] ?? 0; i < (from[at + 1] ?? 0); i++)
      mended += (weights[hypothesis[i] ?? 0] ?? 0) * (share[i] ?? 0);
    const minutes = alive * (costs[at] ?? 0) + (alive - mended) * visit;
    if (mended >= WORTH_MENDING_UNSEEN * alive && minutes < best.minutes) best = { minutes, at };
  }
  const attempt = tries[best.at];
  return { minutes: best.minutes, order: attempt ? [attempt] : [] };
}

/** What may be tried now. To watch comes last while something is mended unseen: that the picture stays says nothing. */
export function worthTrying(situation: Situation): readonly OpenRemedy[] {
  const open = openRemedies(situation);
  return mendsUnseen(situation) ? open.filter((one) => !onlyWaits(one)) : open;
}

/** The plan that is acted on: as good as it can be had in the time of a step. */
export function carefulPlan(situation: Situation, tries: readonly Try[]): RepairPlan {
  const { probabilities, here, rules } = situation;
  return mendsUnseen(situation)
    ? oneOnly(situation, probabilities, here, tries)
    : bestPlan(probabilities, here, tries, rules.manifest);
}

/** Nobody is sent for a fault that is away, unless it is known what to mend there: it is watched for. */
export function isWatchedFor(situation: Situation): boolean {
  return mendsUnseen(situation) && Math.max(...situation.probabilities) < LIKELY;
}
