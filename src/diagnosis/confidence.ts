import type { Confidence } from './diagnosis.js';

/** Judged thresholds: from which probability on a verdict may be called so. */
const LEAST: readonly (readonly [number, Confidence])[] = [
  [0.95, 'almost-certain'],
  [0.8, 'very-likely'],
  [0.5, 'likely'],
  [0.25, 'possible'],
];

/** The word for a probability, 0 to 1. */
export function confidenceOf(probability: number): Confidence {
  return LEAST.find(([least]) => probability >= least)?.[1] ?? 'not-enough';
}
