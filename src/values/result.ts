import type { Sentence } from '../messages/say.js';

/** Either a value, or the sentence that tells the person what to write instead. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Sentence };

export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function problem<T>(sentence: Sentence): Result<T> {
  return { ok: false, problem: sentence };
}
