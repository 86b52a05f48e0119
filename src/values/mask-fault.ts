import type { Sentence } from '../messages/say.js';
import { isContiguous, type Octets } from './octets.js';

/** The only numbers whose ones all stand before their noughts. */
const MASK_NUMBERS: ReadonlySet<number> = new Set([255, 254, 252, 248, 240, 224, 192, 128, 0]);
/** From here up no address can be given to a device (RFC 5771, RFC 1112), so a mask was meant. */
const FIRST_NON_UNICAST = 224;

/** Why four numbers are no mask, and what was probably meant. `text` is what was typed, quoted. */
export function maskFault(octets: Octets, text: string): Sentence {
  const [first, second, third, fourth] = octets;
  const inverted: Octets = [255 - first, 255 - second, 255 - third, 255 - fourth];
  if (isContiguous(inverted)) return { id: 'typed.mask-inverted', with: { text, mask: inverted.join('.') } };
  if (first < FIRST_NON_UNICAST) return { id: 'typed.address-as-mask', with: { text } };
  const index = octets.findIndex((octet) => !MASK_NUMBERS.has(octet));
  const number = octets[index];
  if (number === undefined) return { id: 'typed.mask-order', with: { text } };
  return { id: 'typed.mask-number', with: { text, number, position: index + 1 } };
}
