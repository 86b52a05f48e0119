import type { Answer, Answers } from '../answers/answer.js';
import type { Factors } from '../ranking/posterior.js';
import type { FindingId, PlaceId, QuestionId, RemedyId, StageId } from '../rulebase/records.js';
import type { CallEvent, CallHeader } from './events.js';
import type { KnownFacts } from './known-of.js';

/** A remedy that was tried, and what came of it. */
export interface Trial {
  readonly remedy: RemedyId;
  readonly took: 'yes' | 'no' | 'cant-tell';
  readonly picture: 'yes' | 'no';
  /** The picture was there before it was tried, too: a fault that comes and goes, and was away. */
  readonly wasThere?: true;
}

/** Where a call stands: everything that its events say, nothing that is worked out from the rule base. */
export interface CallState {
  readonly header: CallHeader;
  /** The events that hold, in order; what was taken back is gone. */
  readonly events: readonly CallEvent[];
  /** Every answer given, in order, corrected ones too. */
  readonly history: readonly Answer[];
  /** The answers that hold now; those a remedy made stale are gone from here, and kept in the events. */
  readonly answers: Answers;
  readonly askedBefore: ReadonlySet<QuestionId>;
  readonly here: PlaceId;
  readonly lastStage?: StageId;
  readonly notes: readonly string[];
  readonly trials: readonly Trial[];
  /** What tried remedies left of each cause's weight. */
  readonly factors: Factors;
  /** Findings spent on causes that are mended. A new epoch starts from priors and what is left. */
  readonly spent: ReadonlySet<FindingId>;
  readonly epoch: number;
  /** Tried remedies, each with what was known of the facts it looks at: it may come back when those change. */
  readonly tried: ReadonlyMap<RemedyId, KnownFacts>;
  readonly passed: ReadonlySet<string>;
  /** Spoilt checks that can't be put right. */
  readonly left: ReadonlySet<string>;
  /**
   * What was looked at and left standing, by contradiction (or `read-back:` and the question), with the answers
   * it is about. It comes up again once one of those is given anew.
   */
  readonly kept: ReadonlyMap<string, readonly QuestionId[]>;
  readonly restoredBy?: RemedyId;
  readonly closed?: 'picture-back' | 'visit' | 'stopped' | 'out-of-scope';
}

/** A call of which nothing is known yet. */
export function freshState(header: CallHeader): CallState {
  return {
    header,
    events: [],
    history: [],
    answers: new Map(),
    askedBefore: new Set(),
    here: 'site',
    notes: [],
    trials: [],
    factors: new Map(),
    spent: new Set(),
    epoch: 1,
    tried: new Map(),
    passed: new Set(),
    left: new Set(),
    kept: new Map(),
  };
}

/** Answers that contradict each other and were left standing. */
export function disputedOf({ kept }: CallState): ReadonlySet<QuestionId> {
  return new Set([...kept].filter(([id]) => !id.startsWith(READ_BACK)).flatMap(([, between]) => between));
}

/** Under this and the question's id a number that nobody can read back is kept. */
export const READ_BACK = 'read-back:';
