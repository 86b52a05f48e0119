import { type OpenRemedy, openRemedies } from '../../../src/steps/open-remedies.js';
import { chanceOf } from '../../../src/steps/repair-plan.js';
import type { Situation } from '../../../src/steps/situation.js';
import { visitMinutes, wayMinutes } from '../../../src/steps/ways.js';
import type { Action } from './policy.js';

/** To try a remedy, or first the question that its gate waits for: a guard holds for every policy. */
export function tryOrGate({ remedy, gate }: OpenRemedy): Action {
  const question = gate[0];
  return question ? { kind: 'ask', question: question.id } : { kind: 'try', remedy: remedy.id };
}

/** Minutes of a remedy with its gate questions and the way from here. */
export function minutesOf({ here, rules }: Situation, { attempt }: OpenRemedy): number {
  return attempt.minutes + wayMinutes(rules.manifest, here, attempt.place);
}

/** Mending a cause less often than this is no reason to try a remedy for it. */
const MENDS_FROM = 0.2;

/** The remedy of the fewest minutes that mends this hypothesis at least one time in five. */
export function cheapestFor(situation: Situation, hypothesis: number): OpenRemedy | undefined {
  const fitting = openRemedies(situation).filter(({ attempt }) =>
    attempt.mends.some(([h, chance]) => h === hypothesis && chance >= MENDS_FROM),
  );
  return least(fitting, (one) => minutesOf(situation, one));
}

/**
 * The remedy of the best chance for its minutes, as long as it is worth more than a visit would cost (the ratio
 * rule: Kadane, Simon 1977); `undefined` where none is.
 */
export function bestRatio(situation: Situation): OpenRemedy | undefined {
  const worth = (one: OpenRemedy): number =>
    chanceOf(one.attempt, situation.probabilities) / minutesOf(situation, one);
  const best = least(openRemedies(situation), (one) => -worth(one));
  return best && worth(best) * visitMinutes(situation.rules.manifest) > 1 ? best : undefined;
}

/** The one with the least of a measure; the first of several. */
export function least<T>(things: readonly T[], measure: (one: T) => number): T | undefined {
  let best: { readonly one: T; readonly by: number } | undefined;
  for (const one of things) {
    const by = measure(one);
    if (!best || by < best.by) best = { one, by };
  }
  return best?.one;
}
