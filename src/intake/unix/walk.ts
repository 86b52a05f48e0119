import { looksOf } from '../looks.js';
import type { Line } from '../parser.js';

/** What a step makes of a line: understood, not its own but inside its format, or behind its end. */
export type Step = 'read' | 'pass' | 'end';

const LONGEST = 2000;
const MOST_BLANK = 2;

/** The text of a line; none where the line is too long for any console. */
export function shortText(line: Line | undefined): string {
  return line === undefined || line.text.length > LONGEST ? '' : line.text;
}

/**
 * The index of the first line at or after `from` that the test accepts, or -1. Lines that have none of the
 * sets of bits of `HAS` that are needed are not asked, nor are the shortest.
 */
export function firstWhere(
  lines: readonly Line[],
  from: number,
  test: (text: string, index: number) => boolean,
  ...needs: readonly number[]
): number {
  const looks = looksOf(lines);
  for (let index = Math.max(0, from); index < lines.length; index++) {
    const look = looks[index] ?? 0;
    if (look === 0 || !hasOneOf(look, needs)) continue;
    if (test(lines[index]?.text ?? '', index)) return index;
  }
  return -1;
}

function hasOneOf(look: number, needs: readonly number[]): boolean {
  for (const bits of needs) if ((look & bits) === bits) return true;
  return needs.length === 0;
}

/** Goes from line to line until the step says `end` or there are too many blank lines together; gives the lines read. */
export function walk(
  lines: readonly Line[],
  from: number,
  step: (text: string, line: number, index: number) => Step,
  mostBlank = MOST_BLANK,
): Set<number> {
  const understood = new Set<number>();
  let blank = 0;
  for (let index = from; index < lines.length; index++) {
    const line = lines[index];
    if (line === undefined) break;
    if (line.text.trim() === '') {
      blank += 1;
      if (blank > mostBlank) break;
      continue;
    }
    blank = 0;
    const said = step(shortText(line), line.number, index);
    if (said === 'end') break;
    if (said === 'read') understood.add(line.number);
  }
  return understood;
}
