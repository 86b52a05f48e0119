/** Stands in place of what an earlier rule has dealt with, so that no later rule looks at it. */
export const DONE = '\uE000';

/** What hides a secret. Four letters whatever its length, so that the length says nothing. */
export const HIDDEN = 'xxxx';

/** A part of the text; `shown` stands in its place, or the part stays legible where there is none. */
export interface Span {
  readonly start: number;
  readonly end: number;
  readonly shown?: string;
}

/** Finds what it knows in a text, in order, none overlapping. `about` is the question that was answered. */
export type MaskRule = (text: string, about: string) => readonly Span[];

/** The matches of a global pattern that `judge` does not pass over. */
export function spansOf(
  text: string,
  pattern: RegExp,
  judge: (match: string, at: number) => string | 'legible' | undefined,
): readonly Span[] {
  const spans: Span[] = [];
  for (const { 0: match, index } of text.matchAll(pattern)) {
    const shown = judge(match, index);
    if (shown === undefined) continue;
    const span = { start: index, end: index + match.length };
    spans.push(shown === 'legible' ? span : { ...span, shown });
  }
  return spans;
}

/** The text with letters and digits hidden, except the last four of them. */
export function lastFour(text: string): string {
  let left = [...text].filter((character) => /[A-Za-z0-9]/.test(character)).length;
  return text.replace(/[A-Za-z0-9]/g, (character) => (left-- > 4 ? 'x' : character));
}
