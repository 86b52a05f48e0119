const NIBBLE = 0xf;
const FULL_WIDTH_OFFSET = 0xfee0;

/**
 * The same text with digits of every script, full-width letters, dashes and wide spaces as their plain ASCII
 * counterparts: what the rules look at. Of the same length, so that a place in it is a place in the original.
 */
export function fold(text: string): string {
  return text.replace(/[^\0-\x7f]/g, plain);
}

function plain(character: string): string {
  const code = character.charCodeAt(0);
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - FULL_WIDTH_OFFSET);
  if (/\p{Nd}/u.test(character)) return digit(code);
  if (/[\p{Pd}\u2212]/u.test(character)) return '-';
  if (/[\u3002\uff61\u00b7]/.test(character)) return '.';
  return /\s/.test(character) ? ' ' : character;
}

/** Every script's digits below U+10000 begin at a code point that ends in 0 or in 6 (Unicode 16, category Nd). */
function digit(code: number): string {
  const beginsAtSix = !/\p{Nd}/u.test(String.fromCharCode(code & ~NIBBLE));
  return String((code & NIBBLE) - (beginsAtSix ? 6 : 0));
}
