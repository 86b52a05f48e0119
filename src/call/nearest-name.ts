import { nearest } from '../rulebase/did-you-mean.js';

/** What a mistyped word was meant to be, of the words that there are; nothing where none is near enough. */
export function nearestName(word: string, known: readonly string[]): string | undefined {
  return nearest(word, known);
}
