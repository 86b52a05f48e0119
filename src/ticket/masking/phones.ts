import { HIDDEN, type Span } from './span.js';

/** Groups of digits with at most three spaces, dots, dashes, slashes or brackets between two digits. */
const GROUPS = /(?<![0-9A-Za-z])[+(]{0,2}\d(?:[ ()./-]{0,3}\d)*/g;
const NAMED_BEFORE = /\b(?:tel|phone|mobile|cell|call|ring|text|fax|contact|reach|number)\b[^.;\d]{0,24}$/i;
const PORTS_BEFORE = /\b(?:ports?|vlans?|channels?|lines?)[ :]{0,2}$/i;
const LONGEST_CONTEXT = 40;

/** Fewest digits of a number that nothing names as one; most (ITU-T E.164: fifteen, and a nought in brackets). */
const FEWEST = 7;
const MOST = 16;
/** National numbers without a nought in front, by the lengths of their groups: common practice, no source. */
const SHAPES: ReadonlySet<string> = new Set(
  (
    '3-4 4-4 3-3-3 3-3-4 1-3-3-4 4-3-3 4-3-4 3-4-4 2-3-4 2-4-4 2-3-3 3-2-2 3-2-3 3-2-2-2 2-3-2-2 2-2-2-2 ' +
    '2-2-2-2-2 1-2-2-2-2 3-6 3-7 3-8 4-6 4-7 5-5 5-6 2-7 2-8 4-4-4-4'
  ).split(' '),
);

/** Phone numbers, international and national. Any six digits or more after a word such as *phone* count. */
export function phones(text: string, about: string): readonly Span[] {
  return [...text.matchAll(GROUPS)].flatMap(({ 0: match, index }) => {
    const before = text.slice(Math.max(0, index - LONGEST_CONTEXT), index);
    const isNamed = NAMED_BEFORE.test(index < LONGEST_CONTEXT ? `${about} ${before}` : before);
    if (PORTS_BEFORE.test(before) || !isPhone(match, isNamed)) return [];
    // A bracket around more than the number is not the number's.
    const skip = match.startsWith('(') && !match.includes(')') ? 1 : 0;
    return [{ start: index + skip, end: index + match.length, shown: HIDDEN }];
  });
}

function isPhone(run: string, isNamed: boolean): boolean {
  const groups = run.match(/\d+/g) ?? [];
  const digits = groups.join('').length;
  if (isNamed && digits >= FEWEST - 1) return true;
  if (digits < FEWEST) return false;
  if (groups.length === 1 || (/^(?:\+|\(|0\d)/.test(run) && digits <= MOST)) return true;
  // One that begins with a nought or a plus may stand behind another number.
  if (/[ /](?:\+|\(?0\d)/.test(run)) return true;
  const between = run.match(/(?<=\d)[^\d]+/g) ?? [];
  const isSpelt = between.every((sign) => /^[ -]$/.test(sign)) || between.every((sign) => sign === '.');
  return isSpelt && SHAPES.has(groups.map((group) => group.length).join('-'));
}
