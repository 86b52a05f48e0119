import type { AnswerKind, PlaceId, Signs, Source, StageId, Word } from './records.js';

/** The side of the fork a stage stands on: the camera's, the phone's, or after they join. */
export type Side = 'camera' | 'phone' | 'joined';

export interface Stage {
  readonly id: StageId;
  readonly title: string;
  readonly side: Side;
}

export interface Place {
  readonly id: PlaceId;
  readonly title: string;
  /** It is at hand at each of these, such as a phone wherever one stands on the site; the first is nearest from elsewhere. */
  readonly within?: readonly PlaceId[];
}

/** Minutes from one place to another; the way back may differ (a ladder is slower up than down). */
export interface Way {
  readonly from: PlaceId;
  readonly to: PlaceId;
  readonly minutes: number;
}

export interface Manifest {
  readonly version: string;
  readonly date: string;
  readonly title: string;
  readonly stages: readonly Stage[];
  readonly words: Readonly<Record<Word, number>>;
  readonly reliability: Reliability;
  readonly places: readonly Place[];
  readonly ways: readonly Way[];
  readonly kit: readonly Titled[];
  readonly hypotheses: Hypotheses;
  readonly visit: Visit;
  /** Minutes charged for a question of another stage than the last one. */
  readonly subjectPrice: number;
  /** Minutes charged for each thing tried, besides its own: the look at the phone after it, and the caller's trust. */
  readonly tryPrice?: number;
  /** Share of questions a caller cannot answer. */
  readonly cantTell: number;
  /** While this finding shows this value, findings that tell of the present moment say nothing. */
  readonly silence?: { readonly finding: string; readonly value: string };
  readonly source: Source;
}

export interface Titled {
  readonly id: string;
  readonly title: string;
}

/** Error rate of one answer, by where it came from; `said` also by the kind of answer. */
export interface Reliability {
  /** Rule bases before 0.3 know no moments; those read out are as good as a number. */
  readonly said: Readonly<Record<Exclude<AnswerKind, 'moment'>, number>> & { readonly moment?: number };
  readonly agreed: number;
  readonly pasted: number;
  readonly read: number;
  /** Of an answer that contradicts another and was left standing. */
  readonly disputed: number;
}

export interface Hypotheses {
  /** Share of the prior that goes to `other in <stage>`, all stages together. */
  readonly otherShare: number;
  readonly nothing: { readonly title: string; readonly prior: number; readonly signs: Signs };
}

/** What sending someone costs: labour, and the days the owner waits, priced in minutes a day. */
export interface Visit {
  readonly labourMinutes: number;
  readonly waitDays: number;
  readonly minutesPerDay: number;
}
