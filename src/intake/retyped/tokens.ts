import { folded, spaced } from './fold.js';
import { type Meaning, misspelt, phraseAt } from './phrases.js';
import { type Value, valueAt } from './values.js';

/** A piece of a line: a value, a word or phrase with its meaning, a word without one, or a sign. */
export type Token = { readonly start: number; readonly end: number } & (
  | Meaning
  | { readonly type: 'value'; readonly value: Value }
  | { readonly type: 'word' }
  | { readonly type: 'sign'; readonly sign: string }
);

const BLANKS = / +/y;
/** A letter of a script without blanks stands for itself. */
const WORD =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]|(?:(?![\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー])[\p{L}\p{N}\p{M}])+/uy;
const VALUE_BEGINS = /[0-9a-f:/]/;
/** Directly before a value there is no letter, and no dot or sign that would make it the end of something longer. */
const WITHIN = /[a-z0-9_@%]|[.,:/-]$/;

/** The pieces of a line; blanks fall away. */
export function tokensOf(line: string): readonly Token[] {
  const text = folded(line);
  const words = spaced(text);
  const tokens: Token[] = [];
  for (let at = 0; at < line.length; ) {
    const token = tokenAt(text, words, at);
    if (token === undefined) {
      at += 1;
      continue;
    }
    tokens.push(token);
    at = token.end;
  }
  return tokens;
}

function tokenAt(text: string, words: string, start: number): Token | undefined {
  if (match(text, start, BLANKS) !== undefined) return undefined;
  const found = mayBeValue(text, start) ? valueAt(text, start) : undefined;
  const phrase = found === undefined || found.value.shape === 'number' ? phraseAt(words, start) : undefined;
  if (found !== undefined && phrase === undefined) {
    return { start, end: found.end, type: 'value', value: found.value };
  }
  if (phrase !== undefined) return { start, end: start + phrase.text.length, ...phrase.meaning };
  const word = match(words, start, WORD);
  if (word === undefined) return { start, end: start + 1, type: 'sign', sign: text.charAt(start) };
  return { start, end: start + word.length, ...(misspelt(word) ?? { type: 'word' }) };
}

function mayBeValue(text: string, start: number): boolean {
  if (!VALUE_BEGINS.test(text.charAt(start))) return false;
  const before = text.charAt(start - 1);
  // A colon between a word and its value is no part of the value; one that begins it is.
  if (before === ':' || before === '-' || before === ',') return true;
  return !WITHIN.test(before) || (before === '/' && /[ \d]/.test(text.charAt(start - 2)));
}

function match(text: string, at: number, pattern: RegExp): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
