import { linesOf } from './clean.js';
import { merged } from './merged.js';
import type { Line, Parser } from './parser.js';
import type { Seen } from './seen.js';

/** A parser that took lines, the first and the last of them, as numbered in the text as it came. */
export interface Used {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** What a text told, which lines nobody understood, and who understood the others. */
export interface Reading {
  readonly seen: Seen;
  /** None of them blank. */
  readonly unread: readonly Line[];
  /** By their first lines. */
  readonly parsers: readonly Used[];
}

interface Part {
  readonly used: Used;
  readonly seen: Partial<Seen>;
}

/**
 * Reads a pasted text with the parsers given. The earlier claim wins; of two that claim the same line the one that
 * stands first in the list. Those that read leftovers come last, over what the others left.
 */
export function read(text: string, parsers: readonly Parser[]): Reading {
  const lines = linesOf(text);
  const understood = new Set<number>();
  const first = partsOf(
    lines,
    parsers.filter((parser) => parser.readsLeftovers !== true),
    understood,
  );
  const others = parsers.filter((parser) => parser.readsLeftovers === true);
  const last = stretchesLeft(lines, first).flatMap((stretch) => partsOf(stretch, others, understood));
  const parts = [...first, ...last].sort((one, other) => one.used.from - other.used.from);
  return {
    seen: merged(parts.map((part) => part.seen)),
    unread: lines.filter((line) => line.text !== '' && !understood.has(line.number)),
    parsers: parts.map((part) => part.used),
  };
}

/** The lines before, between and behind what was read; what stands within an output was typed by nobody. */
function stretchesLeft(lines: readonly Line[], read: readonly Part[]): readonly (readonly Line[])[] {
  const stretches: (readonly Line[])[] = [];
  let at = 0;
  for (const used of [...read.map((part) => part.used), undefined]) {
    const start = at;
    while (at < lines.length && (lines[at]?.number ?? 0) < (used?.from ?? Number.POSITIVE_INFINITY)) at += 1;
    if (at > start) stretches.push(lines.slice(start, at));
    while (at < lines.length && (lines[at]?.number ?? 0) <= (used?.to ?? 0)) at += 1;
  }
  return stretches;
}

function partsOf(
  lines: readonly Line[],
  parsers: readonly Parser[],
  understood: Set<number>,
): readonly Part[] {
  const parts: Part[] = [];
  // A claim is asked for again only once it lies behind, so that each parser looks at each line once.
  const claims = parsers.map((parser) => parser.claims(lines, 0));
  for (let at = 0; at < lines.length; ) {
    const winner = earliest(claims);
    const parser = winner === undefined ? undefined : parsers[winner.of];
    if (winner === undefined || parser === undefined) break;
    const taken = parser.take(lines, winner.at);
    for (const number of taken.lines) understood.add(number);
    if (taken.lines.size > 0) parts.push({ used: usedBy(parser, taken.lines), seen: taken.seen });
    at = behind(lines, winner.at, parts.at(-1)?.used.to ?? 0);
    for (const [of, other] of parsers.entries()) {
      const claim = claims[of] ?? -1;
      if (claim !== -1 && claim < at) claims[of] = at < lines.length ? other.claims(lines, at) : -1;
    }
  }
  return parts;
}

function earliest(claims: readonly number[]): { readonly of: number; readonly at: number } | undefined {
  let best: { readonly of: number; readonly at: number } | undefined;
  for (const [of, at] of claims.entries())
    if (at >= 0 && (best === undefined || at < best.at)) best = { of, at };
  return best;
}

function usedBy(parser: Parser, numbers: ReadonlySet<number>): Used {
  let [from, to] = [Number.POSITIVE_INFINITY, 0];
  for (const number of numbers) [from, to] = [Math.min(from, number), Math.max(to, number)];
  return { name: parser.name, from, to };
}

/** The place behind the claim and behind every line that was taken. */
function behind(lines: readonly Line[], claim: number, lastTaken: number): number {
  let at = claim + 1;
  while (at < lines.length && (lines[at]?.number ?? 0) <= lastTaken) at += 1;
  return at;
}
