import type { Condition } from './condition.js';
import type { Manifest, Side } from './manifest.js';

/**
 * The records of a rule base, as they stand in `rules/`. One record a file; `rules/schema/` says the
 * same in JSON Schema. Ids are plain strings because the rule base, not the code, says which exist.
 */

export type StageId = string;
export type QuestionId = string;
export type FindingId = string;
export type CauseId = string;
export type RemedyId = string;
export type FactId = string;
export type ValueId = string;
export type PlaceId = string;
export type KitId = string;
export type CautionId = string;
/** A frequency word of the manifest, such as `mostly`. */
export type Word = string;

/** Where a record comes from. `judged` marks an estimated probability or a choice of ours. */
export type Source =
  | 'judged'
  | 'common practice, no source'
  | {
      readonly title: string;
      readonly section: string;
      /** Somebody opened the section itself, or found it quoted or restated, and it says so. */
      readonly opened?: 'text' | 'restatement';
    };

/** Value -> how often a finding shows it. Values not listed share what is left. */
export type Sign = Readonly<Record<ValueId, Word>>;
export type Signs = Readonly<Record<FindingId, Sign>>;

export type AnswerKind = 'choice' | 'yes-no' | 'several' | 'address' | 'mask' | 'moment' | 'number' | 'text';

/** How an answer can end a call before anything is looked into. */
export type ChoiceEnds = 'may-not-ask' | 'out-of-scope';

export interface Choice {
  readonly id: ValueId;
  readonly title: string;
  /** Where the person then is. */
  readonly place?: PlaceId;
  readonly ends?: ChoiceEnds;
}

/** What an answer is besides evidence: the kit at hand, or a line of the ticket's head. */
export type Part = 'kit' | 'camera' | 'where' | 'words' | 'since' | 'promised';

export type AnswerShape =
  | { readonly type: 'choice' | 'several'; readonly choices: readonly Choice[] }
  | { readonly type: 'yes-no' | 'address' | 'mask' | 'moment' | 'text' }
  | { readonly type: 'number'; readonly unit: string; readonly min: number; readonly max: number };

/** Whose hands a question or a remedy needs. */
export type Who = 'anyone' | 'owner' | 'installer' | 'help-desk';

interface Recorded {
  readonly id: string;
  readonly title: string;
  readonly source: Source;
}

export interface Question extends Recorded {
  readonly stage: StageId;
  /** The words to say, read out as they stand. */
  readonly prompt: string;
  /** What a good answer looks like, and how the caller finds it. */
  readonly help: string;
  readonly answer: AnswerShape;
  readonly minutes: number;
  readonly place: PlaceId;
  readonly who: Who;
  readonly needs?: readonly KitId[];
  readonly when?: Condition;
  /** Asked at the start, in this order, whatever it is worth. */
  readonly opening?: number;
  /** Observation of the intake that answers it. */
  readonly reads?: string;
  readonly part?: Part;
  /** How-tos that help to find the answer, by their names in `knowledge/how-to/`. */
  readonly howTo?: readonly string[];
}

export interface FindingValue {
  readonly title: string;
  /** Share of this value among calls whose cause has nothing to do with the finding. */
  readonly usual: number;
  /** Stages of the picture path that this value proves good. */
  readonly clears?: readonly StageId[];
  /** Set where arithmetic shows a fault by itself: the sentence of the ticket, with {placeholders}. */
  readonly defect?: { readonly says: string; readonly cause?: CauseId };
}

/** What every cause of a range of stages has in common, unless it has signs of its own. */
export interface StageDefault {
  readonly from: StageId;
  readonly to: StageId;
  readonly side?: Side;
  readonly sign: Sign;
}

export interface FindingRule {
  readonly value: ValueId;
  readonly conditions: Condition;
  /** Higher wins where two rules of a finding fire with different values. */
  readonly priority?: number;
  readonly source?: Source;
}

export interface Finding extends Recorded {
  readonly stage: StageId;
  readonly values: Readonly<Record<ValueId, FindingValue>>;
  /** Can be settled although some of its questions were answered *can't tell*: a sum over ranges. */
  readonly withGaps?: boolean;
  /** Tells how things stand at this moment: silent while the picture of a fault that comes and goes is there. */
  readonly now?: boolean;
  /** A circumstance holds whatever is mended, so no remedy ever spends it. */
  readonly circumstance?: boolean;
  /** The questions that together settle it. */
  readonly asks: readonly QuestionId[];
  readonly defaults?: readonly StageDefault[];
  readonly repeats?: {
    readonly finding: FindingId;
    readonly agrees: Readonly<Record<ValueId, readonly ValueId[]>>;
  };
  readonly rules: readonly FindingRule[];
}

export interface Cause extends Recorded {
  readonly stage: StageId;
  /** How often, per 1,000 calls. */
  readonly prior: number;
  /** The one-line verdict of the ticket. */
  readonly verdict: string;
  readonly signs: Signs;
  /** Causes that show much the same. */
  readonly alsoExplainedBy: readonly CauseId[];
  /** Causes that no step tells apart from this one, and need not: this remedy cures both. */
  readonly sameRemedy?: readonly { readonly cause: CauseId; readonly remedy: RemedyId }[];
  /** Why this cause shows a finding quite otherwise than its stage does. */
  readonly because?: Readonly<Record<FindingId, string>>;
  readonly article?: string;
}

export interface Remedy extends Recorded {
  readonly stage: StageId;
  /** The words to say, one action a line. */
  readonly steps: readonly string[];
  readonly place: PlaceId;
  readonly minutes: number;
  readonly who: Who;
  readonly needs?: readonly KitId[];
  readonly cautions?: readonly CautionId[];
  /** Never proposed until this is true, whatever it would save. */
  readonly gate?: { readonly condition: Condition; readonly why: string };
  readonly when?: Condition;
  /** Cheap looks that come before it, whatever they show: nobody cuts a line for what one look would have told. */
  readonly askBefore?: readonly QuestionId[];
  readonly mends: readonly { readonly cause: CauseId; readonly chance: Word }[];
  /** Findings that may read otherwise afterwards and have to be asked again. */
  readonly changes: readonly FindingId[];
  /** Did the remedy do what it should? Asked besides "is the picture back?". */
  readonly check: string;
  /** Facts whose sums are shown with it, as far as they are known: an address to use, and what to check first. */
  readonly sums?: readonly FactId[];
  readonly undo: string;
  /** The state the site is left in, for whoever reads the ticket. */
  readonly leaves: string;
  /** What a visit brings along where this remedy is likely. */
  readonly bring?: readonly string[];
}

export interface Contradiction extends Recorded {
  /** When this is true, the answers below cannot all be right. */
  readonly when: Condition;
  readonly between: readonly QuestionId[];
  /** The answer to check first. */
  readonly check: QuestionId;
  readonly says: string;
}

export interface Caution extends Recorded {
  readonly words: string;
}

export interface TesterFault extends Recorded {
  readonly stage: StageId;
  readonly when: Condition;
  readonly spoils: readonly FindingId[];
  readonly help: readonly string[];
  readonly sums?: readonly FactId[];
  /** Answers to ask again once it is put right. */
  readonly askAgain: readonly QuestionId[];
}

/** A value that arithmetic derives from answers. `sum` names the function, `inputs` its arguments in order. */
export interface FactRecord extends Recorded {
  readonly type: 'choice' | 'yes-no' | 'number' | 'text';
  readonly values?: readonly ValueId[];
  readonly unit?: string;
  /** A sum by name, or a topic of sums: then `as` says which question gives which of its inputs. */
  readonly sum: string;
  readonly inputs: readonly FactId[];
  readonly as?: Readonly<Record<QuestionId, string>>;
  /** Of a topic: inputs that are the same in every call. */
  readonly given?: Readonly<Record<string, string>>;
  /** Of a topic: the number or word to take instead of its verdict. */
  readonly field?: string;
  /** Rests on lengths, sizes or loads as people guess them: it never proves a defect. */
  readonly estimate?: boolean;
}

export interface Retired extends Recorded {
  readonly kind: Kind;
  readonly since: string;
  readonly why: string;
  readonly replacedBy?: string;
}

/** The folders of `rules/`, each with its kind of record. */
export interface Records {
  readonly questions: readonly Question[];
  readonly findings: readonly Finding[];
  readonly causes: readonly Cause[];
  readonly remedies: readonly Remedy[];
  readonly facts: readonly FactRecord[];
  readonly contradictions: readonly Contradiction[];
  readonly cautions: readonly Caution[];
  readonly 'tester-faults': readonly TesterFault[];
  readonly retired: readonly Retired[];
}
export type Kind = keyof Records;

export const KINDS = [
  'questions',
  'findings',
  'causes',
  'remedies',
  'facts',
  'contradictions',
  'cautions',
  'tester-faults',
  'retired',
] as const satisfies readonly Kind[];

/** A whole rule base, checked and sorted by id. */
export interface RuleBase extends Records {
  readonly manifest: Manifest;
}
