import type { Line } from '../parser.js';
import { type Step, walk } from '../unix/walk.js';

/** Mail programs that make a paragraph of every line double the blank ones. */
const MOST_BLANK = 5;

/** Goes from line to line until the step says `end` or there is a wide gap; gives the lines read. */
export function walkWide(
  lines: readonly Line[],
  from: number,
  step: (text: string, line: number, index: number) => Step,
): Set<number> {
  return walk(lines, from, step, MOST_BLANK);
}

/** The index of the next line behind `index` that is not blank; -1 where the gap is wide. */
export function nextIndex(lines: readonly Line[], index: number): number {
  for (let next = index + 1; next <= index + MOST_BLANK + 1 && next < lines.length; next++) {
    if ((lines[next]?.text ?? '').trim() !== '') return next;
  }
  return -1;
}
