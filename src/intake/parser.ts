import type { Seen } from './seen.js';

/** A line of the cleaned text, with the number it had in the text as it came, counted from 1. */
export interface Line {
  readonly number: number;
  /** Without the blanks at its end; leading blanks stand, as formats use them. */
  readonly text: string;
}

/** What a parser took: the lines it understood, and what they told. */
export interface Taken {
  readonly seen: Partial<Seen>;
  /** Numbers of the lines that were understood. */
  readonly lines: ReadonlySet<number>;
}

/**
 * Reads the output of one command, in whatever language. `claims` gives the cheap look: the index of the first line at
 * or after `from` where its format begins, or -1. `take` reads from there as far as the format goes. Both take time in
 * proportion to the lines they look at, and never throw.
 */
export interface Parser {
  readonly name: string;
  /** Who documents the format. `from memory` where it was not looked up. */
  readonly source: string;
  /** Sees only what stands before, between and behind what the other parsers read, each stretch by itself. */
  readonly readsLeftovers?: boolean;
  readonly claims: (lines: readonly Line[], from: number) => number;
  readonly take: (lines: readonly Line[], from: number) => Taken;
}
