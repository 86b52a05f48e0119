import { ok, problem, type Result } from './result.js';

const LONGEST = 200;
const LONGEST_QUOTE = 40;

/** Control, bidi and zero-width characters: they never belong to an answer and can disguise one. */
const UNSEEN = /[\p{C}\p{Default_Ignorable_Code_Point}]/gu;
const FULL_WIDTH = /[\uFF01-\uFF5E]/g;
const FULL_WIDTH_OFFSET = 0xfee0;

/**
 * Typed text on one line: full-width characters narrowed, unseen characters removed, every run of
 * white space one space, none at the ends. Refuses what is longer than 200 characters or then empty.
 */
export function tidy(text: string): Result<string> {
  if (text.length > LONGEST) {
    return problem({ id: 'typed.too-long', with: { text: quoted(text), most: LONGEST } });
  }
  const tidied = onOneLine(text);
  return tidied === '' ? problem({ id: 'typed.empty' }) : ok(tidied);
}

/** What was typed, fit to stand inside a sentence: at most 40 characters, nothing unseen in it. */
export function quoted(text: string): string {
  const characters = [...onOneLine(text.slice(0, LONGEST))];
  if (characters.length <= LONGEST_QUOTE && text.length <= LONGEST) return characters.join('');
  return `${characters.slice(0, LONGEST_QUOTE - 1).join('')}…`;
}

function onOneLine(text: string): string {
  return text
    .replace(FULL_WIDTH, (character) => String.fromCharCode(character.charCodeAt(0) - FULL_WIDTH_OFFSET))
    .replace(/[\u3002\uFF61]/g, '.')
    .replace(/\s+/g, ' ')
    .replace(UNSEEN, '')
    .replace(/ +/g, ' ')
    .trim();
}
