import type { Facts } from '../findings/fact.js';
import { mentions } from '../rulebase/mentions.js';
import type { Remedy } from '../rulebase/records.js';

/**
 * What is known of the facts a remedy looks at, as one text. A remedy that was tried stays away
 * until this has changed; one that looks at nothing stays away for the call.
 */
export function knownOf(remedy: Remedy, facts: Facts): string {
  const ids = [remedy.when, remedy.gate?.condition].flatMap((condition) =>
    condition ? mentions(condition) : [],
  );
  return JSON.stringify(ids.map((id) => [id, facts.get(id)?.value ?? null]));
}
