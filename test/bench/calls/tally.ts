import type { Manifest } from '../../../src/rulebase/manifest.js';
import type { Question, Remedy } from '../../../src/rulebase/records.js';
import { wayMinutes } from '../../../src/steps/ways.js';

/** What a call has cost so far. */
export interface Tally {
  readonly minutes: number;
  /** Questions asked, and remedies tried. */
  readonly questions: number;
  readonly remedies: number;
  /** Changes of place that somebody had to walk. */
  readonly trips: number;
}

export const NOTHING_YET: Tally = { minutes: 0, questions: 0, remedies: 0, trips: 0 };

/** Reading a number back costs as much as a yes or no; common practice, no source. */
export const READ_BACK_MINUTES = 0.3;

/** With the minutes of this step and of the way to it. */
export function withStep(
  tally: Tally,
  manifest: Manifest,
  here: string,
  step: Question | Remedy,
  counts: 'questions' | 'remedies',
): Tally {
  const way = wayMinutes(manifest, here, step.place);
  return {
    ...tally,
    minutes: tally.minutes + step.minutes + way,
    trips: tally.trips + (way > 0 ? 1 : 0),
    [counts]: tally[counts] + 1,
  };
}
