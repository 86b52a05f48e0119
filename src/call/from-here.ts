import type { Paste } from '../intake/paste.js';
import type { RuleBase } from '../rulebase/records.js';
import { type Address, showAddress } from '../values/address.js';
import type { CallEvent } from './events.js';
import { answersFrom, cameraOf, type OfPaste, pasteEvent } from './from-paste.js';
import type { CallState } from './state.js';

/** An answer that somebody gave on the way. */
export type SaidOnTheWay = Omit<Extract<CallEvent, { type: 'answered' }>, 'at'>;

/**
 * What comes of reading this computer. The camera's address is said, not read, where a person gave it for the probes;
 * one that the call knows already is not said again.
 */
export function eventsFromHere(
  { state, rules }: { readonly state: CallState; readonly rules: RuleBase },
  paste: Paste,
  given: Address | undefined,
): { readonly said: readonly SaidOnTheWay[]; readonly read: OfPaste } {
  const known = cameraOf(state, rules);
  const question = rules.questions.find(({ reads }) => reads === 'camera.address')?.id;
  const isNew = known === undefined && given !== undefined && question !== undefined;
  const adapter = paste.way.adapter === undefined ? {} : { adapter: paste.way.adapter };
  const about = { ...adapter, isHere: true };
  const answers = answersFrom(rules, paste, about, known ?? given);
  return {
    said: isNew ? [{ type: 'answered', question, answer: showAddress(given), origin: 'said' }] : [],
    read: pasteEvent(state, paste, answers, about, 'read'),
  };
}
