/**
 * Weight of evidence in decibans, 10·log₁₀ of a ratio of odds
 * (I. J. Good, Probability and the Weighing of Evidence, 1950). `ratio` > 0.
 */
export function decibans(ratio: number): number {
  return 10 * Math.log10(ratio);
}

/** Odds of a probability, kept finite at 0 and 1. */
export function odds(probability: number): number {
  const p = Math.min(Math.max(probability, 1e-12), 1 - 1e-12);
  return p / (1 - p);
}

/** The probability that odds given in decibans stand for: 1 / (1 + 10^(−db/10)). */
export function probabilityOfDecibans(db: number): number {
  return 1 / (1 + 10 ** (-db / 10));
}
