import { ORDINARY } from './ordinary-words.js';
import { HIDDEN, type Span } from './span.js';

/** After these nearly everything that looks made up is a secret. */
const SECRET_NAME =
  '(?:pass(?:words?|codes?|phrases?|wd|keys?)|pwd?|psk|authori[sz]ation|bearer|credentials?|login|(?:wi-?fi|wlan|wireless|network|security|encryption|pre-?shared|wpa[23]?|wep|api|access|secret|private|licen[cs]e|product)[ _-]?keys?|api_?key|(?:verification|security|access|pairing|activation|unlock|one-time)[ -]codes?)';
/** These have everyday meanings as well. */
const EVERYDAY_NAME = '(?:pin[ -]?codes?|keys?|pass|pin|token|secret)';
const NAMED = new RegExp(`(?<![0-9A-Za-z])(?:(${SECRET_NAME})|${EVERYDAY_NAME})(?![0-9A-Za-z])`, 'gi');

const GIVES = /["')\]]{0,2} ?(?:[:=]>?|->|→) ?/y;
const SAYS =
  /["')\]]{0,2} (?:(?:now|still|again) )?(?:is|was|are|were|reads)(?: (?:now|still|again|set to|changed to))? /y;
/** Judged by its first 200 characters: without a bound, one long run of names would take quadratic time. */
const LONGEST_JUDGED = 200;
const WORD = new RegExp(`\\S{1,${LONGEST_JUDGED}}`, 'y');
const SPACE = /["')\]]{0,2}\s{1,3}/y;
const QUOTED = /["'“„«`]([^"'”“»`]{1,200})["'”“»`]/y;
/** So many words on, a thing that looks made up is still taken for the secret. */
const WORDS_ON = 10;
const WORDS_ON_EVERYDAY = 3;
const HOW_IT_IS = /^(?:[a-z]+(?:ed|ing)|correct|hidden|broken|weak|strong|short|long|stored|safe)[.,;]?$/i;
/** Versions, standards, figures with a unit, numbered things, addresses and dates. */
const EVERYDAY =
  /^(?:v?\d+(?:\.\d+)+|wpa\d?.*|wep|802[\w.]*|\d+(?:am|pm|st|nd|rd|th|ms|min|fps|[kmg]?bit|[kmg]i?b|[kmg]?hz|ma|x)|(?:camera|cam|channel|ch|port|phone|router|switch|lamp|room|gate|door|floor|level|step|android|ios|line|page)\d{1,2}|.*\d{1,3}(?:\.\d{1,3}){3}.*|\d{4}-\d\d-\d\d.*)$/i;
const NUMBER_NAMES = /^(?:port|error|code|channel|year|since|in|of|at|line|page|model|type)[:.]?$/i;

/** Passwords, keys, PINs and tokens that are called so: `password: ...`, `the key is ...`, `pin 4711`. */
export function secrets(text: string): readonly Span[] {
  const spans: Span[] = [];
  for (const { 0: name, 1: secretName, index } of text.matchAll(NAMED)) {
    if (index < (spans.at(-1)?.end ?? 0)) continue;
    const place = index + name.length;
    const given = after(text, place, GIVES);
    const said = after(text, place, SAYS);
    const isSecret = secretName !== undefined;
    const next = after(text, place, SPACE);
    if (given !== undefined) spans.push(...valueAt(text, given, !/^pin/i.test(name)));
    else if (isSecret && said !== undefined) spans.push(...wordAt(text, said));
    else if (next !== undefined) spans.push(...madeUpAmong(text, next, isSecret));
  }
  return spans;
}

/** Everything up to the first ordinary word, or to the end of the clause. */
function valueAt(text: string, place: number, isPhrase: boolean): readonly Span[] {
  const quoted = match(text, place, QUOTED);
  if (quoted !== undefined && !isOrdinary(quoted)) return [hide(place + 1, place + quoted.length - 1)];
  let end = place;
  for (let at = place; ; at = end + 1) {
    const word = match(text, at, WORD);
    if (word === undefined || isOrdinary(word)) break;
    if (!isPhrase && !looksMadeUp(word)) break;
    end = endOfWord(text, at + word.length);
    if (/[.,;)]/.test(text.charAt(end - 1))) break;
  }
  return end === place ? madeUpAmong(text, place, isPhrase) : [hide(place, trimmed(text, place, end))];
}

/** The word after *the password is*, unless it says how the password is. */
function wordAt(text: string, place: number): readonly Span[] {
  const quoted = match(text, place, QUOTED);
  const word = quoted ?? match(text, place, WORD);
  if (word === undefined) return [];
  if (isOrdinary(word) || HOW_IT_IS.test(word)) return madeUpAmong(text, place, true);
  const end = place + word.length;
  return [hide(place, quoted === undefined ? trimmed(text, place, endOfWord(text, end)) : end)];
}

/** What looks made up among the next few words of the sentence. */
function madeUpAmong(text: string, place: number, isSecret: boolean): readonly Span[] {
  const spans: Span[] = [];
  let before = '';
  let at: number | undefined = place;
  for (let left = isSecret ? WORDS_ON : WORDS_ON_EVERYDAY; left > 0 && at !== undefined; left--) {
    const quoted = match(text, at, QUOTED);
    const word = quoted ?? match(text, at, WORD);
    if (word === undefined) break;
    const isNamed = quoted !== undefined && before === '' && isSecret && !isOrdinary(quoted);
    const isHidden = isNamed || (looksMadeUp(word) && !NUMBER_NAMES.test(before));
    if (!isHidden && word.length >= LONGEST_JUDGED) break;
    const end: number = isHidden && !isNamed ? endOfWord(text, at + word.length) : at + word.length;
    if (isNamed) spans.push(hide(at + 1, end - 1));
    else if (isHidden) spans.push(hide(at, trimmed(text, at, end)));
    if (/[.;]$/.test(word)) break;
    before = word;
    at = after(text, end, SPACE);
  }
  return spans;
}

/** Letters and digits mixed, or letters with a sign inside, or four digits and more. */
function looksMadeUp(word: string): boolean {
  const bare = word.replace(/^["'“„«`(]+|["'”»`).,;:]+$/g, '');
  if (bare.length < 4 || EVERYDAY.test(bare)) return false;
  return /^\d{4,12}$/.test(bare) || (/[a-z]/i.test(bare) && /[\d!@#$%^&*+=?~](?=.)/.test(bare));
}

/** Whether the first word is one of plain speech. */
function isOrdinary(text: string): boolean {
  const word = /[\p{L}\p{N}][^\s"”»`.,;:)?]*/u.exec(text)?.[0].toLowerCase().replace('’', "'");
  return word === undefined || ORDINARY.has(word.replace(/'$/, ''));
}

function hide(start: number, end: number): Span {
  return { start, end, shown: HIDDEN };
}

/** Where the word that goes on at `place` ends. */
function endOfWord(text: string, place: number): number {
  return place + (match(text, place, /\S*/y) ?? '').length;
}

/** The end of a word without the punctuation after it. */
function trimmed(text: string, start: number, end: number): number {
  return end - (/[.,;:)"'\]]{0,9}$/.exec(text.slice(Math.max(start, end - 9), end))?.[0].length ?? 0);
}

function after(text: string, place: number, pattern: RegExp): number | undefined {
  const found = match(text, place, pattern);
  return found === undefined ? undefined : place + found.length;
}

function match(text: string, place: number, pattern: RegExp): string | undefined {
  pattern.lastIndex = place;
  return pattern.exec(text)?.[0];
}
