const DIGITS = 4;

/** A number with at most four digits that count, as it stands in a sentence. */
export function rounded(number: number): string {
  return String(Number(number.toPrecision(DIGITS)));
}

/** Two ends of a range in one unit: `2–4 Mbit/s`, or one number where both ends read the same. */
export function showRange(low: number, high: number, unit: string): string {
  const ends = [rounded(low), rounded(high)];
  const shown = ends[0] === ends[1] ? ends[0] : ends.join('–');
  return unit === '' ? `${shown}` : `${shown} ${unit}`;
}
