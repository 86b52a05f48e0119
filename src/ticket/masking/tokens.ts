import { HIDDEN, type Span, spansOf } from './span.js';

/** Letters, digits and the signs that keys and tokens are written with (RFC 4648, sections 4 and 5). */
const TOKEN = /[0-9A-Za-z][0-9A-Za-z+/=_-]*/g;
const SEPARATORS = /[+/=_-]+/;

const LEAST_KEY = 14;
const LEAST_RANDOM = 16;
const LEAST_IN_BOTH_CASES = 10;
const LEAST_ALL_LETTERS = 24;
const LEAST_SERIAL = 8;
const LEAST_DIGITS_OF_SERIAL = 6;

/** Keys and tokens that nothing before them gives away, and numbers that look like serial numbers. */
export function tokens(text: string): readonly Span[] {
  return spansOf(text, TOKEN, (token) => {
    if (token.length < LEAST_SERIAL) return undefined;
    const pieces = token.split(SEPARATORS).filter((piece) => piece !== '');
    if (isKey(token, pieces)) return HIDDEN;
    const plain = pieces.join('');
    return pieces.some(isSerial) ? HIDDEN + plain.slice(-4) : undefined;
  });
}

function isKey(token: string, pieces: readonly string[]): boolean {
  if (pieces.some(isRandom)) return true;
  if (token.length < LEAST_KEY || count(token, /\d/g) < 3 || count(token, /[a-z]/gi) < 3) return false;
  return pieces.some((piece) => changes(piece) > 1) || isLicence(pieces);
}

function isRandom(piece: string): boolean {
  const isMixed = count(piece, /\d/g) > 1 && count(piece, /[a-z]/gi) > 1;
  if (piece.length >= LEAST_RANDOM && isMixed) return true;
  if (piece.length >= LEAST_ALL_LETTERS && count(piece, /[a-z][A-Z]/g) > 3) return true;
  return (
    piece.length >= LEAST_IN_BOTH_CASES && changes(piece) > 3 && /[a-z]/.test(piece) && /[A-Z]/.test(piece)
  );
}

/** Three groups or more of one length, as keys are printed on labels. */
function isLicence(pieces: readonly string[]): boolean {
  const length = pieces[0]?.length ?? 0;
  return pieces.length > 2 && length > 3 && pieces.every((piece) => piece.length === length);
}

function isSerial(piece: string): boolean {
  const digits = count(piece, /\d/g);
  const isMixed = digits < piece.length;
  return piece.length >= LEAST_SERIAL && isMixed && digits >= LEAST_DIGITS_OF_SERIAL;
}

/** How often letters turn to digits or back. */
function changes(piece: string): number {
  return count(piece, /[a-z](?=\d)|\d(?=[a-z])/gi);
}

function count(text: string, pattern: RegExp): number {
  return text.match(pattern)?.length ?? 0;
}
