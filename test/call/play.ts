import type { RawAnswer } from '../../src/answers/answer.js';
import { advance, type Call, openCall, replay } from '../../src/call/call.js';
import type { CallEvent, CallHeader, Role } from '../../src/call/events.js';
import { inWords } from '../../src/messages/say.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { TINY } from './tiny-rule-base.js';

export const DIGEST = 'd'.repeat(64);
export const AT = '2026-11-25T08:30:00.000Z';

export function headerFor(role: Role = 'desk', rules: RuleBase = TINY): CallHeader {
  const version = rules.manifest.version;
  return { record: 1, id: 'quay-1', opened: AT, whydark: '0.1.0', rules: { version, digest: DIGEST }, role };
}

export const said = (question: string, answer: RawAnswer): CallEvent => ({
  at: AT,
  type: 'answered',
  question,
  answer,
  origin: 'said',
});
export const tried = (
  remedy: string,
  took: 'yes' | 'no' | 'cant-tell',
  picture: 'yes' | 'no' = 'no',
): CallEvent => ({ at: AT, type: 'tried', remedy, took, picture });
export const agreed = (question: string): CallEvent => ({ at: AT, type: 'agreed', question });
export const undone: CallEvent = { at: AT, type: 'undone' };
export const kept = (contradiction: string): CallEvent => ({ at: AT, type: 'kept', contradiction });
export const passedOver = (step: string): CallEvent => ({ at: AT, type: 'passed-over', step });

/** The call after these events, one by one. Throws where one of them does not fit. */
export async function played(events: readonly CallEvent[], role: Role = 'desk'): Promise<Call> {
  let call = await openCall(TINY, DIGEST, headerFor(role));
  for (const event of events) {
    const next = await advance(call, event);
    if (!next.ok) throw new Error(inWords(next.problem));
    call = next.value;
  }
  return call;
}

/** The same, all at once. */
export async function replayed(events: readonly CallEvent[], role: Role = 'desk'): Promise<Call> {
  const result = await replay(TINY, DIGEST, headerFor(role), events);
  if (!result.ok) throw new Error(inWords(result.problem));
  return result.value;
}

/** The sentence that an event comes back with. */
export async function refusal(before: readonly CallEvent[], event: CallEvent): Promise<string> {
  const next = await advance(await played(before), event);
  return next.ok ? 'taken' : inWords(next.problem);
}

export function probabilityOf({ assessed }: Call, cause: string): number {
  const at = assessed.model.hypotheses.findIndex(({ id }) => id === cause);
  return assessed.probabilities[at] ?? Number.NaN;
}
