import type { Facts } from '../findings/fact.js';
import { mentions } from '../rulebase/mentions.js';
import type { FactId, Remedy } from '../rulebase/records.js';

/** Facts with their values as texts that can be compared. */
export type KnownFacts = ReadonlyMap<FactId, string>;

/** What is known of the facts that a remedy looks at, in its condition and in its gate. */
export function knownOf(remedy: Remedy, facts: Facts): KnownFacts {
  const ids = [remedy.when, remedy.gate?.condition].flatMap((condition) =>
    condition ? mentions(condition) : [],
  );
  return new Map(
    ids.flatMap((id): [FactId, string][] => {
      const fact = facts.get(id);
      return fact ? [[id, JSON.stringify(fact.value)]] : [];
    }),
  );
}

/**
 * Whether a fact reads otherwise now. One that is only being asked anew has not changed, and neither has one
 * that was not known then: a remedy that was tried is no better for it.
 */
export function hasChanged(then: KnownFacts, now: KnownFacts): boolean {
  return [...now].some(([id, value]) => then.has(id) && then.get(id) !== value);
}
