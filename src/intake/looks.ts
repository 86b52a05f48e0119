import type { Line } from './parser.js';

/** What a line has in it somewhere, as bits: enough to pass over most lines without a regular expression. */
export const HAS = {
  digit: 1,
  colon: 2,
  round: 4,
  square: 8,
  quote: 16,
  capital: 32,
  signs: 64,
  blank: 128,
  foreign: 256,
};

const ANYTHING = 32_768;
/** Nobody's console prints longer lines, and no output begins with a shorter one. */
const LONGEST = 2000;
const SHORTEST = 3;

const OF_CODE = Uint16Array.from({ length: 128 }, (_, code) => bitsOf(String.fromCharCode(code)));
const KNOWN = new WeakMap<readonly Line[], Uint16Array>();

/** The bits of `HAS` of each line; nought for a line with which no output begins. Looked at once for a list. */
export function looksOf(lines: readonly Line[]): Uint16Array {
  const known = KNOWN.get(lines);
  if (known?.length === lines.length) return known;
  const looks = Uint16Array.from(lines, ({ text }) => lookOf(text));
  KNOWN.set(lines, looks);
  return looks;
}

function lookOf(text: string): number {
  if (text.length < SHORTEST || text.length > LONGEST) return 0;
  let bits = ANYTHING;
  for (let at = 0; at < text.length; at++) bits |= OF_CODE[text.charCodeAt(at)] ?? HAS.foreign;
  return bits;
}

function bitsOf(character: string): number {
  if (character >= '0' && character <= '9') return HAS.digit;
  if (character >= 'A' && character <= 'Z') return HAS.capital;
  if (':([" '.includes(character))
    return (
      { ':': HAS.colon, '(': HAS.round, '[': HAS.square, '"': HAS.quote, ' ': HAS.blank }[character] ?? 0
    );
  return '#$%>*=-;'.includes(character) ? HAS.signs : 0;
}
