import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';
import { saysUnknown } from './unknown-words.js';

/** A number known only to lie between two ends (both included); the ends are equal where it is known. */
export interface Between {
  readonly low: number;
  readonly high: number;
  /** Nobody knew: the ends are what is usual. */
  readonly isGuess: boolean;
}

/** What is usual where nobody knows. */
export interface Usual {
  readonly low: number;
  readonly high: number;
}

/** A number that is known. */
export function exactly(number: number): Between {
  return { low: number, high: number, isGuess: false };
}

/** What is usual, as a number nobody knows. */
export function anyOf(usual: Usual): Between {
  return { low: usual.low, high: usual.high, isGuess: true };
}

/**
 * What a person typed for one number: the number, a range (`2-4 Mbit/s`, `2 to 4`, `between 2 and 4`;
 * a unit typed once counts for both ends) or that they don't know, which gives what is usual. `one`
 * reads a single number. Refuses a range that runs backwards.
 */
export function parseBetween(
  text: string,
  one: (text: string) => Result<number>,
  usual: Usual,
): Result<Between> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  if (saysUnknown(tidied.value)) return ok(anyOf(usual));
  const ends = splitRange(tidied.value);
  if (ends === undefined) return mapped(one(tidied.value), exactly);
  const [low, high] = [one(ends.low), one(ends.high)];
  if (!low.ok) return low;
  if (!high.ok) return high;
  if (low.value <= high.value) return ok({ low: low.value, high: high.value, isGuess: false });
  const said = { text: quoted(tidied.value), low: quoted(ends.high), high: quoted(ends.low) };
  return problem({ id: 'amount.backwards', with: said });
}

const RANGE = /^(?:from )?(\d[^-–—−…]*?|[.,]\d[^-–—−…]*?) ?(?:-|–|—|−|…|\.{2,3}| to ) ?([.,]?\d.*)$/iu;
const BETWEEN_AND = /^between (.*\d.*?) and (\d.*)$/i;

function splitRange(text: string): { readonly low: string; readonly high: string } | undefined {
  const [, low, high] = BETWEEN_AND.exec(text) ?? RANGE.exec(text) ?? [];
  if (low === undefined || high === undefined) return undefined;
  return { low: withUnitOf(low.trim(), high), high: withUnitOf(high.trim(), low) };
}

function withUnitOf(text: string, other: string): string {
  return /[^\d., ]/u.test(text) ? text : `${text} ${/[^\d., ].*$/u.exec(other)?.[0] ?? ''}`.trim();
}

function mapped<A, B>(result: Result<A>, change: (value: A) => B): Result<B> {
  return result.ok ? ok(change(result.value)) : result;
}
