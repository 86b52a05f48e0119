import type { CauseId, FindingId, QuestionId, RemedyId, StageId, ValueId, Who } from '../rulebase/records.js';

/** How sure the verdict is, in words that the messages hold. */
export type Confidence = 'almost-certain' | 'very-likely' | 'likely' | 'possible' | 'not-enough';

export type VerdictKind =
  /** A named cause leads by far. */
  | 'named'
  /** Several causes are left. */
  | 'open'
  /** Something of a stage that the rule base does not name. */
  | 'other'
  /** The picture is there again by itself. */
  | 'nothing'
  /** A remedy brought the picture back. */
  | 'restored'
  | 'may-not-ask'
  | 'out-of-scope';

export interface Verdict {
  readonly kind: VerdictKind;
  /** One line, in words. */
  readonly says: string;
  readonly cause?: CauseId;
  readonly probability: number;
  readonly confidence: Confidence;
  readonly remedy?: RemedyId;
  /** Whether what brought the picture back mends one thing only, or a sum had proven the cause before. */
  readonly confirmed?: boolean;
}

/** A finding's weight for or against a cause. */
export interface Reason {
  readonly finding: FindingId;
  readonly title: string;
  readonly value: ValueId;
  readonly shows: string;
  /** Decibans, rounded to a tenth; positive speaks for the cause. */
  readonly decibans: number;
  /** Set where it repeats another finding and does not count. */
  readonly repeats?: FindingId;
}

export interface Ranked {
  readonly id: CauseId;
  readonly kind: 'cause' | 'other' | 'nothing';
  readonly title: string;
  readonly stage?: StageId;
  readonly probability: number;
  readonly reasons: readonly Reason[];
}

export interface DefectReport {
  readonly finding: FindingId;
  readonly grade: 'proven' | 'follows';
  readonly says: string;
  readonly cause?: CauseId;
  /** The sum, line by line, in words. */
  readonly lines: readonly string[];
}

/** Something seen to work, and the stages it proves good. */
export interface Works {
  readonly finding: FindingId;
  readonly says: string;
  readonly clears: readonly StageId[];
}

export type StageState = 'good' | 'faulty' | 'suspect' | 'unseen';

export interface PathStage {
  readonly id: StageId;
  readonly title: string;
  readonly side: 'camera' | 'phone' | 'joined';
  readonly state: StageState;
  /** Share of the probability that lies in this stage, 0 to 1. */
  readonly probability: number;
}

/** A step of the plan, for whoever carries it out. */
export interface PlannedStep {
  readonly remedy?: RemedyId;
  readonly title: string;
  readonly who: Who;
  readonly where: string;
  readonly minutes: number;
  readonly how: readonly string[];
  readonly cautions: readonly string[];
  readonly check: string;
  readonly undo: string;
}

export interface Diagnosis {
  /** Version of this format. */
  readonly format: 1;
  readonly rules: { readonly version: string; readonly digest: string };
  readonly verdict: Verdict;
  readonly ranked: readonly Ranked[];
  readonly defects: readonly DefectReport[];
  readonly works: readonly Works[];
  readonly spoilt: readonly {
    readonly fault: string;
    readonly title: string;
    readonly help: readonly string[];
  }[];
  readonly conflicts: readonly {
    readonly id: string;
    readonly says: string;
    readonly between: readonly QuestionId[];
  }[];
  readonly path: readonly PathStage[];
  /** The key of the next step, as in `ask:question`, `try:remedy`, `visit`, `end:…`. */
  readonly next: string;
  /** Remedies in order; a visit, where it comes to that, is the last. */
  readonly plan: readonly PlannedStep[];
  /** Set where someone has to go: what to do there in order, what to bring. */
  readonly visit?: {
    readonly minutes: number;
    readonly days: number;
    readonly doThere: readonly string[];
    readonly bring: readonly string[];
    readonly cautions: readonly string[];
  };
  /** Watch, and ring back: set where the picture is back or comes and goes without proof of the cause. */
  readonly watch?: string;
}
