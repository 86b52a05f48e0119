import type { Script } from '../../../src/call/scripted-call.js';
import type { QuestionId, RemedyId } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';

/** What somebody on a call does next. Only our own policy reads numbers back. */
export type Action =
  | { readonly kind: 'ask'; readonly question: QuestionId }
  | { readonly kind: 'read-back'; readonly question: QuestionId }
  | { readonly kind: 'try'; readonly remedy: RemedyId }
  | { readonly kind: 'visit' };

/** `asked`: every question put in this call so far, those that a remedy made stale too. */
export type Policy = (situation: Situation, asked: ReadonlySet<QuestionId>) => Action;

/** A policy by name. Only the bound looks at the script, which says what is really wrong. */
export interface NamedPolicy {
  readonly name: string;
  /** The cause is known from the start, whatever the ranking says. */
  readonly knows?: true;
  /** It ranks with the numbers of the world that callers come from, not with the rule base's own. */
  readonly ranksByTruth?: true;
  readonly policyFor: (script: Script) => Policy;
}
