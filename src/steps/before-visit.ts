import { mostTellingFor, type Telling } from './look-ahead.js';
import { visitTries } from './orders.js';
import { chanceOf } from './repair-plan.js';
import type { Situation } from './situation.js';

/** A visit that mends at least this often needs no more questions; judged. */
const SURE_ENOUGH = 0.8;
/** Telling less than this, in nats a minute, is not worth a question; taking longer than this, in minutes, neither; judged. */
const WORTH_ASKING = 0.006;
const LONGEST = 6;

/**
 * What to ask before somebody is sent. No answer saves minutes on the call any more, so the look-ahead asks nothing; but
 * whoever goes takes only what the list names, and a visit that brings the wrong things is made twice.
 */
export function beforeVisit(situation: Situation): Telling | undefined {
  if (chanceOfVisit(situation) >= SURE_ENOUGH) return undefined;
  return mostTellingFor(situation, WORTH_ASKING, LONGEST);
}

/** The chance that what the visit's list names brings the picture back. */
export function chanceOfVisit(situation: Situation): number {
  const left = [...situation.probabilities];
  let mended = 0;
  for (const attempt of visitTries(situation)) {
    mended += chanceOf(attempt, left);
    for (const [h, chance] of attempt.mends) left[h] = (left[h] ?? 0) * (1 - chance);
  }
  return mended;
}
