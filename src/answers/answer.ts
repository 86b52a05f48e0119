import type { QuestionId, ValueId } from '../rulebase/records.js';
import type { Address } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import type { Moment } from '../values/moment.js';

/** Where an answer came from; `agreed` was read back to the caller and confirmed. */
export const ORIGINS = ['said', 'agreed', 'pasted', 'read'] as const;
export type Origin = (typeof ORIGINS)[number];

/** An answer as it is kept in records and answer files; `null` is *can't tell*. */
export type RawAnswer = null | string | number | boolean | readonly string[];

/** An answer after parsing. *Can't tell* is always one of them. */
export type AnswerValue =
  | { readonly kind: 'cant-tell' }
  | { readonly kind: 'choice'; readonly id: ValueId }
  | { readonly kind: 'yes-no'; readonly yes: boolean }
  | { readonly kind: 'several'; readonly ids: readonly ValueId[] }
  | { readonly kind: 'address'; readonly address: Address }
  | { readonly kind: 'mask'; readonly mask: Mask }
  | { readonly kind: 'moment'; readonly moment: Moment }
  | { readonly kind: 'number'; readonly number: number }
  | { readonly kind: 'text'; readonly text: string };

export interface Answer {
  readonly question: QuestionId;
  readonly value: AnswerValue;
  readonly origin: Origin;
  /** Answers of one paste share its id, and count once where reliability is added up. */
  readonly paste?: string;
  /** The line of the paste it stands on, counted from 1. */
  readonly line?: number;
}

/** The answers that hold now, by question. */
export type Answers = ReadonlyMap<QuestionId, Answer>;

/** Whether arithmetic on this answer may be called proven: it was read back, pasted or read from the computer. */
export function isConfirmed(answer: Answer): boolean {
  return answer.origin !== 'said';
}

/** Whether the question was put and the caller could not tell. */
export function isCantTell(answer: Answer | undefined): boolean {
  return answer?.value.kind === 'cant-tell';
}
