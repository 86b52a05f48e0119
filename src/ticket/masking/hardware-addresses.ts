import { lastFour, type Span, spansOf } from './span.js';

/** MAC addresses without colons: pairs with dashes, dots or spaces, fours, halves, or twelve in a row. */
const SPELLINGS =
  /(?<![0-9A-Za-z])(?:[0-9A-F]{2}([-. ])(?:[0-9A-F]{2}\1){4}[0-9A-F]{2}(?:(?:\1[0-9A-F]{2}){2})?|[0-9A-F]{4}([-. ])[0-9A-F]{4}\2[0-9A-F]{4}|[0-9A-F]{6}[-:]?[0-9A-F]{6})(?!-?[0-9A-Za-z])/gi;
/** With nothing but digits these could be a list of numbers; dashes, and fours with dots, could not. */
const SURE_WITHOUT_LETTER = /^(?:..-|....\.)/;
const NAMED_BEFORE = /\bmac\b[^.;]{0,24}$/i;
const DIGEST_BEFORE = /\bdigest[ :]{0,3}$/i;
const LONGEST_CONTEXT = 32;

/** MAC addresses in every spelling but colons; the last four stay. A digest that is named as one stays whole. */
export function hardwareAddresses(text: string): readonly Span[] {
  return spansOf(text, SPELLINGS, (match, at) => {
    const before = text.slice(Math.max(0, at - LONGEST_CONTEXT), at);
    if (match.includes(' ') && !/\d/.test(match)) return undefined;
    if (DIGEST_BEFORE.test(before)) return 'legible';
    if (/[A-F]/i.test(match) || SURE_WITHOUT_LETTER.test(match) || NAMED_BEFORE.test(before)) {
      return lastFour(match);
    }
    return undefined;
  });
}
