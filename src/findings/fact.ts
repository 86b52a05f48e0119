import type { AnswerValue } from '../answers/answer.js';
import type { Sentence } from '../messages/say.js';
import type { Scalar } from '../rulebase/condition.js';
import type { FactId, QuestionId } from '../rulebase/records.js';
import { showAddress } from '../values/address.js';
import { showMask } from '../values/mask.js';
import { showRead } from '../values/moment.js';

/** A known value that conditions may test: an answer, the outcome of a sum, or a finding. */
export interface Fact {
  readonly value: Scalar | readonly string[];
  /** The sum, line by line; empty for an answer or a finding. */
  readonly lines: readonly Sentence[];
  /** The answers it rests on, sorted. */
  readonly basis: readonly QuestionId[];
  /** Rests on what people guess, such as a length: it proves nothing. */
  readonly estimate?: boolean;
}

export type Facts = ReadonlyMap<FactId, Fact>;

/** The plain value of an answer, as conditions compare it; `undefined` for *can't tell*. */
export function plainValue(value: AnswerValue): Fact['value'] | undefined {
  switch (value.kind) {
    case 'cant-tell':
      return undefined;
    case 'choice':
      return value.id;
    case 'yes-no':
      return value.yes;
    case 'several':
      return value.ids;
    case 'address':
      return showAddress(value.address);
    case 'mask':
      return showMask(value.mask);
    case 'moment':
      return showRead(value.moment);
    case 'number':
      return value.number;
    case 'text':
      return value.text;
  }
}
