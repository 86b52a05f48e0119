import { addressKind } from '../../arithmetic/address-kind.js';
import { parseAddress } from '../../values/address.js';
import { parseMask } from '../../values/mask.js';
import { type Span, spansOf } from './span.js';

/** Numbers with dots, commas or spaced dots between them, and a prefix. */
const DOTTED =
  /(?<![\d.,])(?:\d+(?:\.\d+)+|\d+(?:,\d+)+|\d{1,3}(?: \. ?\d{1,3}){3}|\d{1,3}(?:\. \d{1,3}){3})(?:\/\d{1,2}(?!\d))?/g;
const VERSION_BEFORE =
  /(?:\bv|\b(?:version|firmware|release|build|rules|base|whydark|section|clause))[ :.]{0,3}$/i;
const LONGEST_CONTEXT = 16;
/** With commas between them, fewer digits are a list of ports or lights, and threes are one large number. */
const LEAST_WITH_COMMAS = 7;

/** IPv4 addresses: public ones keep their first two numbers, all others and masks stay legible. */
export function internetAddresses(text: string): readonly Span[] {
  return spansOf(text, DOTTED, (match, at) => {
    const [numbers = '', prefix] = match.split('/');
    const octets = numbers.split(/[^\d]+/);
    if (octets.length < 4 || octets.some((octet) => octet.length > 3)) return undefined;
    if (numbers.includes(',') && isList(octets)) return undefined;
    if (VERSION_BEFORE.test(text.slice(Math.max(0, at - LONGEST_CONTEXT), at))) return 'legible';
    if (!octets.some((_, place) => isPublic(octets.slice(place, place + 4)))) return 'legible';
    const [first, second] = octets;
    return `${first}.${second}.x.x${prefix === undefined ? '' : `/${prefix}`}`;
  });
}

function isList(octets: readonly string[]): boolean {
  const [, ...others] = octets;
  return octets.join('').length < LEAST_WITH_COMMAS || others.every((octet) => octet.length === 3);
}

/** A number over 255 is a slip of the tongue in an address that may well be public. */
function isPublic(octets: readonly string[]): boolean {
  if (octets.length < 4) return false;
  const dotted = octets.map(Number).join('.');
  if (parseMask(dotted).ok) return false;
  const address = parseAddress(dotted);
  if (!address.ok) return true;
  const kind = addressKind(address.value).value;
  return kind === 'public' || kind === 'documentation';
}
