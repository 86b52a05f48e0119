/** A ping summary; round trips in milliseconds, and the lengths of the gaps where they were counted. */
export interface PingSummary {
  readonly sent: number;
  readonly received: number;
  readonly runs?: readonly number[] | undefined;
  readonly shortest?: number | undefined;
  readonly mean?: number | undefined;
  readonly longest?: number | undefined;
  /** Answers that came twice. */
  readonly duplicates: number;
}

/** How losses lie: one by one, in bursts, or not told. */
export type Gaps = 'single' | 'bursts' | 'unknown';
/** How round trips lie: close together, mostly close with peaks, all of them long, or in between. */
export type Spread = 'tight' | 'peaks' | 'swollen' | 'uneven' | 'unknown';

/** Gaps this many times longer than chance makes them are bursts; judged, no source. */
const BURST_FACTOR = 2;

/**
 * Losses that fall independently make gaps of 1/(1 - p) packets on average (Gilbert 1960, "Capacity of a
 * burst-noise channel", takes longer ones for a channel with bad spells).
 */
export function gaps({ sent, received, runs }: PingSummary): Gaps {
  if (runs === undefined || runs.length === 0 || received === 0) return 'unknown';
  const mean = runs.reduce((sum, run) => sum + run, 0) / runs.length;
  return mean >= (BURST_FACTOR * sent) / received ? 'bursts' : 'single';
}

/** How the round trips lie; the limits are judged, no source. */
export function spread({ shortest, mean, longest }: PingSummary): Spread {
  if (shortest === undefined || mean === undefined || longest === undefined) return 'unknown';
  if (mean >= 2 * shortest && mean - shortest >= 20) return 'swollen';
  if (longest - shortest <= Math.max(5, shortest)) return 'tight';
  return longest >= 5 * shortest && longest - shortest >= 30 ? 'peaks' : 'uneven';
}
