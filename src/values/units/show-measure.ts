import { rounded } from '../rounded.js';
import type { Range } from './range.js';

const SMALL = 0.1;

/** A number as a person would write it: four figures that count, none beyond a ten-thousandth. */
export function showNumber(value: number): string {
  const plain = Math.abs(value) < SMALL ? Number(value.toFixed(4)) : value;
  return rounded(plain).replace('-', '−');
}

/** One number, or two with a dash between them; three dots where the first is below nought. */
export function showRange({ least, most }: Range<number>): string {
  const [from, to] = [showNumber(least), showNumber(most)];
  if (from === to) return from;
  return least < 0 ? `${from}…${to}` : `${from}–${to}`;
}
