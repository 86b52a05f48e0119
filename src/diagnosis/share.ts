const MILLION = 1_000_000;

/**
 * A probability to a millionth: finer than that, logarithms may differ from one machine to the next, and the
 * same record has to give the same bytes everywhere.
 */
export function share(probability: number): number {
  return Math.round(probability * MILLION) / MILLION;
}
