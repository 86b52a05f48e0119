import type { Answers } from '../answers/answer.js';
import type { Settled } from '../findings/settle.js';
import type { Evidence } from '../ranking/evidence.js';
import type { Model } from '../ranking/model.js';
import type { KitId, PlaceId, QuestionId, RemedyId, RuleBase, StageId, Who } from '../rulebase/records.js';

/** All that the choice of the next step looks at. */
export interface Situation {
  readonly rules: RuleBase;
  readonly model: Model;
  readonly answers: Answers;
  readonly settled: Settled;
  /** Findings that count, and the probability of each hypothesis with them, in the model's order. */
  readonly evidence: readonly Evidence[];
  readonly probabilities: readonly number[];
  /** Where the person is whose hands do things. */
  readonly here: PlaceId;
  readonly hands: ReadonlySet<Who>;
  readonly kit: ReadonlySet<KitId>;
  /** Stage of the last question; asking about another stage has a small price. */
  readonly lastStage?: StageId;
  /** Steps the person asked to leave for another. */
  readonly passed: ReadonlySet<string>;
  /** Remedies tried, until a finding they need has changed. */
  readonly tried: ReadonlySet<RemedyId>;
  /** Questions answered at least once in this call: the opening is not asked twice. */
  readonly askedBefore: ReadonlySet<QuestionId>;
  /** Questions answered more than once: nobody is asked a third time. */
  readonly revised: ReadonlySet<QuestionId>;
  /** Contradictions and spoilt checks that somebody has looked at and left as they are. */
  readonly left: ReadonlySet<string>;
}

/** The key under which a step is passed over. */
export function passKey(kind: 'ask' | 'try', id: string): string {
  return `${kind}:${id}`;
}
