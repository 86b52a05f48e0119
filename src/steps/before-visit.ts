import { type Telling, tellingFor } from './look-ahead.js';
import { visitTries } from './orders.js';
import { chanceOf } from './repair-plan.js';
import type { Situation } from './situation.js';
import { visitMinutes } from './ways.js';

/** A visit that mends at least this often needs no more questions; judged. */
const SURE_ENOUGH = 0.8;
/** Telling less than this, in nats a minute, is not worth a question; taking longer than this, in minutes, neither; judged. */
const WORTH_ASKING = 0.006;
const LONGEST = 6;
/** So many of the most telling are looked into: a list is made for each of their answers. */
const LOOKED_AT = 12;

/**
 * What to ask before somebody is sent. No answer saves minutes on the call any more, so the look-ahead asks nothing; but
 * whoever goes takes only what the list names, and a visit that brings the wrong things is made twice. So it is asked
 * where the list that the answer would make saves more of a second visit than the question takes.
 */
export function beforeVisit(situation: Situation): Telling | undefined {
  const now = chanceOfVisit(situation);
  if (now >= SURE_ENOUGH) return undefined;
  const { manifest } = situation.rules;
  const visit = visitMinutes(manifest);
  return tellingFor(situation, WORTH_ASKING, LONGEST)
    .slice(0, LOOKED_AT)
    .map((telling) => {
      const told = (1 - manifest.cantTell) ** telling.questions.length;
      return { telling, saved: told * (chanceAfter(situation, telling) - now) * visit - telling.minutes };
    })
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved)[0]?.telling;
}

/** The chance that what the visit's list names brings the picture back, once this is told. */
function chanceAfter(situation: Situation, { rows }: Telling): number {
  return rows
    .map((row) => situation.probabilities.map((weight, h) => weight * (row[h] ?? 0)))
    .reduce((sum, weights) => sum + mendedBy(situation, weights), 0);
}

/** The chance that what the visit's list names brings the picture back. */
export function chanceOfVisit(situation: Situation): number {
  return mendedBy(situation, situation.probabilities);
}

function mendedBy(situation: Situation, weights: readonly number[]): number {
  const left = [...weights];
  let mended = 0;
  for (const attempt of visitTries(situation, weights)) {
    mended += chanceOf(attempt, left);
    for (const [h, chance] of attempt.mends) left[h] = (left[h] ?? 0) * (1 - chance);
  }
  return mended;
}
