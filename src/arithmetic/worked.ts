import type { Sentence } from '../messages/say.js';

/** A result with the sum that led to it, line by line, so that a person can check it. */
export interface Worked<T> {
  readonly value: T;
  readonly lines: readonly Sentence[];
}
