import type { Conflict } from '../findings/contradictions.js';
import type { FindingId, QuestionId, RemedyId } from '../rulebase/records.js';

/** How a call can end. */
export type Ending = 'picture-back' | 'may-not-ask' | 'out-of-scope';

/** What to do next. */
export type Step =
  | {
      readonly kind: 'ask';
      readonly question: QuestionId;
      /** The questions that together settle the finding, this one first. */
      readonly group: readonly QuestionId[];
      readonly purpose:
        | { readonly kind: 'opening' }
        | { readonly kind: 'closing' }
        | { readonly kind: 'finding'; readonly finding: FindingId }
        | { readonly kind: 'gate'; readonly remedy: RemedyId }
        /** Whether a check was made in such a way that it tells anything. */
        | { readonly kind: 'soundness'; readonly fault: string };
    }
  | {
      readonly kind: 'read-back';
      readonly question: QuestionId;
      readonly finding: FindingId;
      /** A sum rests on it, or the choice of what to do next hangs on it. */
      readonly because: 'sum' | 'weight';
    }
  | { readonly kind: 'check-answers'; readonly conflict: Conflict }
  | { readonly kind: 'spoilt-check'; readonly fault: string }
  | {
      readonly kind: 'try';
      readonly remedy: RemedyId;
      readonly plan: readonly RemedyId[];
      readonly minutes: number;
    }
  | { readonly kind: 'visit'; readonly minutes: number }
  | { readonly kind: 'end'; readonly how: Ending };
