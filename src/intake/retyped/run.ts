import type { Line } from '../parser.js';
import { type Bound, bind, type Label } from './bind.js';
import { type Looked, lookAt } from './look.js';

/** A line of a run with its values as its neighbours name them. */
export interface Entry {
  readonly looked: Looked;
  /** The number of the line. */
  readonly number: number;
  readonly bounds: readonly Bound[];
  readonly misfits: number;
  /** A word for the value of the line before or after it, which has taken it. */
  readonly isSpentLabel: boolean;
}

/** So many lines in a row may tell nothing; pages have signal strength and the like in between. */
export const LONGEST_GAP = 6;
/** A line that holds a value has one of these; all others are cheap to pass over. */
const MAY_HOLD = /\d{1,3} ?[.,] ?\d{1,3} ?[.,]|[0-9a-f]{0,4}:[0-9a-f]{0,4}:|dhcp/i;

/** Lines that belong together; `end` is the place behind them. */
export interface Run {
  readonly entries: readonly Entry[];
  readonly end: number;
}

/** The lines from a place on that belong together: up to a sentence, or a longer gap. */
export function runFrom(lines: readonly Line[], from: number): Run {
  const looked: Looked[] = [];
  const numbers: number[] = [];
  let gap = 0;
  let at = from;
  for (; at < lines.length && gap <= LONGEST_GAP; at++) {
    const line = lines[at];
    if (line === undefined) break;
    gap += 1;
    if (line.text === '') continue;
    const found = lookAt(line);
    if (found.isTalk) break;
    looked.push(found);
    numbers.push(line.number);
    if (tells(found) || found.label !== undefined) gap = 0;
  }
  return { entries: paired(looked, numbers), end: at };
}

/** Whether a line may hold a value; quick, and right only where it says no. */
export function mayHold(line: Line): boolean {
  return MAY_HOLD.test(line.text);
}

/** Whether the line alone tells something. */
export function tells(looked: Looked): boolean {
  return looked.bounds.length > 0 || looked.isByHand !== undefined;
}

/** Gives values that stand alone on their lines the words that stand alone on lines before or behind them. */
function paired(looked: readonly Looked[], numbers: readonly number[]): readonly Entry[] {
  const entries: Entry[] = looked.map((one, at) => ({
    looked: one,
    number: numbers[at] ?? 0,
    bounds: one.bounds,
    misfits: one.misfits,
    isSpentLabel: false,
  }));
  const take = (at: number, label: Label, from: number): void => {
    const [value, word] = [entries[at], entries[from]];
    if (value === undefined || word === undefined) return;
    const bound = bind(value.looked.tokens, label);
    entries[at] = { ...value, bounds: bound.bounds, misfits: bound.misfits };
    if (bound.bounds.length > 0) entries[from] = { ...word, isSpentLabel: true };
  };
  for (let at = 0; at < looked.length; ) {
    const end = endOfSingles(looked, at);
    if (isValueFirst(looked, at, end)) {
      for (let place = at; place < end; place += 2) {
        const label = looked[place + 1]?.label;
        if (label !== undefined) take(place, label, place + 1);
      }
    } else {
      for (let place = at; place < end; place++) {
        const label = labelFor(looked, at, place);
        if (label !== undefined) take(place, label.label, label.from);
      }
    }
    at = Math.max(end, at + 1);
  }
  return entries;
}

/** The end of the lines from `at` on that each hold either values alone or a word alone. */
function endOfSingles(looked: readonly Looked[], from: number): number {
  let at = from;
  while (at < looked.length && (looked[at]?.isLone === true || looked[at]?.label !== undefined)) at += 1;
  return at;
}

function isValueFirst(looked: readonly Looked[], from: number, end: number): boolean {
  if (end === from || (end - from) % 2 === 1) return false;
  for (let at = from; at < end; at++) {
    if (((at - from) % 2 === 0) !== (looked[at]?.isLone === true)) return false;
  }
  return true;
}

/** The word on the line before; DNS servers may go on over more lines. */
function labelFor(
  looked: readonly Looked[],
  start: number,
  at: number,
): { readonly label: Label; readonly from: number } | undefined {
  if (looked[at]?.isLone !== true) return undefined;
  for (let from = at - 1; from >= start && from >= at - MOST_SERVERS; from--) {
    const label = looked[from]?.label;
    if (label === undefined) continue;
    const isServers = label.type === 'field' && label.field === 'dns';
    return isServers || from === at - 1 ? { label, from } : undefined;
  }
  return undefined;
}

const MOST_SERVERS = 4;
