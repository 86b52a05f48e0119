import { ok, problem, type Result } from '../../values/result.js';
import { quoted, tidy } from '../../values/tidy.js';
import { saysUnknown } from '../../values/unknown-words.js';
import type { Given } from './topic.js';

/** Reads one input as typed; `undefined` where nothing was given. */
export type Read<T> = (typed: string | undefined) => Result<T>;

type Values<R> = { readonly [K in keyof R]: R[K] extends Read<infer T> ? T : never };

/** An input that must be given. */
export function needed<T>(parse: (text: string) => Result<T>): Read<T> {
  return (typed) => (typed === undefined ? problem({ id: 'amount.missing' }) : parse(typed));
}

/** An input that may be left out, and what stands for it then. */
export function optional<T, const F>(parse: (text: string) => Result<T>, otherwise: F): Read<T | F> {
  return (typed) => (typed === undefined ? ok(otherwise) : parse(typed));
}

/** A parser that takes `don't know` too, as `undefined`. */
export function orUnknown<T>(parse: (text: string) => Result<T>): (text: string) => Result<T | undefined> {
  return (text) => {
    const tidied = tidy(text);
    return tidied.ok && saysUnknown(tidied.value) ? ok(undefined) : parse(text);
  };
}

/** One of a few answers by its id, in any capitals; *don't know* means `dont-know` where that is one. */
export function parseChoice<const C extends string>(ids: readonly C[]): (text: string) => Result<C> {
  return (text) => {
    const tidied = tidy(text);
    if (!tidied.ok) return tidied;
    const typed = saysUnknown(tidied.value) ? 'dont-know' : tidied.value.toLowerCase().replace(/ /g, '-');
    const found = ids.find((id) => id === typed);
    if (found !== undefined) return ok(found);
    const said = { text: quoted(tidied.value), choices: ids.join(', ') };
    return problem({ id: 'amount.not-a-choice', with: said });
  };
}

/** Every input read, or the first problem and the input it belongs to. An empty text counts as not given. */
export function readGiven<R extends Readonly<Record<string, Read<unknown>>>>(
  given: Given,
  reads: R,
): Result<Values<R>> & { readonly input?: string } {
  const values: Record<string, unknown> = {};
  for (const [id, read] of Object.entries(reads)) {
    const typed = given[id];
    const result = read(typed === undefined || typed.trim() === '' ? undefined : typed);
    if (!result.ok) return { ...result, input: id };
    values[id] = result.value;
  }
  return ok(values as Values<R>);
}
