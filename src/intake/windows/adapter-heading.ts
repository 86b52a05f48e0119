import type { Line } from '../parser.js';
import { shortText } from '../unix/walk.js';
import { says } from '../unix/words.js';
import { indentOf, leaderField } from './field.js';
import { HEADS, SUFFIX_LABELS } from './ipconfig-words.js';
import { nextIndex } from './walk.js';

const LONGEST = 160;
const MOST_BEFORE_LEADER = 3;

/** The heading of an adapter at this line: it ends in a colon, and a field with a leader stands below, no less indented. */
export function adapterHeading(lines: readonly Line[], index: number): string | undefined {
  const text = shortText(lines[index]);
  if (!text.endsWith(':') || text.length > LONGEST || leaderField(text) !== undefined) return undefined;
  if (says(text, SUFFIX_LABELS)) return undefined;
  const indent = indentOf(text);
  let at = index;
  for (let count = 0; count < MOST_BEFORE_LEADER; count++) {
    at = nextIndex(lines, at);
    if (at < 0) return undefined;
    const below = shortText(lines[at]);
    const isBelow = indentOf(below) > indent || (indent === 0 && says(below, SUFFIX_LABELS));
    const field = leaderField(below);
    if (field !== undefined && (isBelow || indent === 0)) return text.slice(0, -1).trim();
    if (field !== undefined || !isBelow) return undefined;
  }
  return undefined;
}

/** The name of the adapter: the heading without the words for its kind, where these are known. */
export function nameIn(heading: string): string {
  const small = heading.toLowerCase();
  const head = HEADS.find((words) => small.startsWith(`${words} `));
  return head === undefined ? heading : heading.slice(head.length).trim();
}

/** `Windows IP Configuration`: in every language both names stay as they are. */
export function isTitle(lines: readonly Line[], index: number): boolean {
  const text = shortText(lines[index]);
  if (text.length > 60 || !/windows/i.test(text) || !/\bIP\b/.test(text) || text.includes('>')) return false;
  const next = nextIndex(lines, index);
  return (
    next >= 0 &&
    (leaderField(shortText(lines[next])) !== undefined || adapterHeading(lines, next) !== undefined)
  );
}
