import { mostTellingFor, type Telling } from './look-ahead.js';
import { chanceOf, type Try } from './repair-plan.js';
import type { Situation } from './situation.js';

/** The surer a first try is, the shorter a question has to be that comes before it, in minutes; judged. */
const BEFORE = [
  { likelierThan: 0.6, longest: 0 },
  { likelierThan: 0.5, longest: 2 },
  { likelierThan: 0.25, longest: 4 },
  { likelierThan: 0, longest: 8 },
] as const;
/** Telling less than this, in nats a minute, is not worth a question; judged. */
const WORTH_ASKING = 0.02;

/**
 * What to ask before anything is tried at all. By minutes alone a restart with one chance in five is worth its five
 * minutes; but the first thing that a caller is asked to do in vain costs the trust in all that comes after, and what
 * the lights and the lists showed is gone with it. So what tells much in a few minutes is asked first.
 */
export function beforeFirstTry(situation: Situation, first: Try | undefined): Telling | undefined {
  if (!first || situation.tried.size > 0) return undefined;
  const chance = chanceOf(first, situation.probabilities);
  const longest = BEFORE.find(({ likelierThan }) => chance >= likelierThan)?.longest ?? 0;
  return longest > 0 ? mostTellingFor(situation, WORTH_ASKING, longest) : undefined;
}
