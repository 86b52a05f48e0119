import { type Address, parseAddress } from '../../values/address.js';
import { type Address6, parseAddress6 } from '../../values/address6.js';
import { type Mask, parseMask } from '../../values/mask.js';
import type { Result } from '../../values/result.js';
import { remembered } from './remembered.js';

const DOTTED = /^\d{1,3}(?:\.\d{1,3}){3}$/;
/** At least two, and nothing but what an IPv6 address and its zone can have. */
const COLONS = /^[0-9a-f.]{0,15}:[0-9a-f.]{0,15}:[0-9a-f:.]{0,50}(?:%\S{1,40})?$/i;
const MAC = /^[0-9a-f]{1,2}(?::[0-9a-f]{1,2}){5}$/i;
const MASK = /^(?:\d{1,3}(?:\.\d{1,3}){3}|0x[0-9a-f]{8}|\d{1,2})$/i;

const parsed4 = remembered((word) => parsedValue(parseAddress(word)));
const parsed6 = remembered((word) => parsedValue(parseAddress6(word)));
const parsedMask = remembered((word) => parsedValue(parseMask(word)));

/** The IPv4 address that a word is; no word for an empty field, and no mask. */
export function address4(word: string | undefined): Address | undefined {
  return word === undefined || !DOTTED.test(word) ? undefined : parsed4(word);
}

/** The IPv6 address that a word is, with or without a zone. */
export function address6(word: string | undefined): Address6 | undefined {
  return word === undefined || !COLONS.test(word) ? undefined : parsed6(word);
}

/** The mask that a word is: dotted, as a length, or in hexadecimal. */
export function maskOf(word: string | undefined): Mask | undefined {
  return word === undefined || !MASK.test(word) ? undefined : parsedMask(word);
}

/** The two sides of `172.23.40.57/24`; without a slash there is no second. */
export function sides(word: string): readonly [string, string | undefined] {
  const slash = word.indexOf('/');
  return slash < 0 ? [word, undefined] : [word.slice(0, slash), word.slice(slash + 1)];
}

/** A hardware address in small letters with colons; macOS leaves out noughts in front, which are put back. */
export function macOf(word: string | undefined): string | undefined {
  if (word === undefined || !MAC.test(word)) return undefined;
  return word
    .toLowerCase()
    .split(':')
    .map((part) => part.padStart(2, '0'))
    .join(':');
}

/** The words of a line. */
export function wordsOf(text: string): readonly string[] {
  return text.split(/\s+/).filter((word) => word !== '');
}

/** The word behind a word, such as that behind `dev`. */
export function after(words: readonly string[], word: string): string | undefined {
  const at = words.indexOf(word);
  return at < 0 ? undefined : words[at + 1];
}

/** Whether the text has one of the words of a table in it, whatever its letters' size. */
export function says(text: string, table: readonly string[]): boolean {
  const small = text.toLowerCase();
  return table.some((word) => small.includes(word));
}

function parsedValue<T>(result: Result<T>): T | undefined {
  return result.ok ? result.value : undefined;
}
