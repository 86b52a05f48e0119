/** A remedy that was tried: where the true cause stood then, and whether it mended anything here. */
export interface Tried {
  readonly remedy: string;
  readonly rank: number;
  readonly mends: boolean;
  /** What was taken for likely when it was proposed, and what was known. */
  readonly standing: string;
}

/** How a call over the lab went. */
export interface LabCall {
  readonly causes: readonly string[];
  readonly closed: 'picture-back' | 'visit' | 'stopped' | 'out-of-scope' | 'never';
  /** The stream was fetched through the real path at the end. */
  readonly isBack: boolean;
  /** What a sum has proven to be wrong. */
  readonly defects: readonly string[];
  readonly leader: string;
  readonly probability: number;
  /** The place of the true cause at the end, from 1. */
  readonly finalRank: number;
  readonly tried: readonly Tried[];
  readonly wrong: number;
  readonly questions: number;
  readonly minutes: number;
  readonly visits: number;
  /** What whoever was sent did of the visit's own list, in its order, until the picture was back. */
  readonly visitTried: readonly { readonly remedy: string; readonly mends: boolean }[];
  /** Remedies proposed before their gate was open: there must be none. */
  readonly gatesBroken: readonly string[];
}
