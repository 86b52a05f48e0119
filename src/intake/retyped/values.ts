import { type Address, parseAddress } from '../../values/address.js';
import { type Address6, parseAddress6 } from '../../values/address6.js';
import { type Mask, parseMask } from '../../values/mask.js';
import { remembered } from '../unix/remembered.js';

/** A value as its shape tells it: four numbers can be an address, a mask, both, or neither. */
export type Value =
  | { readonly shape: 'dotted'; readonly address?: Address; readonly mask?: Mask; readonly with?: Mask }
  | { readonly shape: 'ipv6'; readonly address6: Address6 }
  | { readonly shape: 'mac'; readonly mac: string }
  /** A mask in hexadecimal or with a slash. */
  | { readonly shape: 'mask'; readonly mask: Mask }
  | { readonly shape: 'number'; readonly mask?: Mask };

export interface Found {
  readonly value: Value;
  readonly end: number;
}

const asAddress = remembered(parseAddress);
const asAddress6 = remembered(parseAddress6);
const asMask = remembered(parseMask);

const MAC =
  /(?:[0-9a-f]{2}([:-])(?:[0-9a-f]{2}\1){4}[0-9a-f]{2}|[0-9a-f]{4}\.[0-9a-f]{4}\.[0-9a-f]{4})(?![0-9a-f:-]|\.[0-9a-f])/y;
const IPV6 =
  /(?=[0-9a-f]{0,4}:[0-9a-f:])[0-9a-f:]{2,39}(?:\.\d{1,3}){0,3}(?:%[\w.-]{1,20})?(?:\/\d{1,3})?(?![\w:])/y;
const NUMBERS =
  '(?:\\d{1,3}(?:\\.\\d{1,3}){3}|\\d{1,3}(?:,\\d{1,3}){3}|\\d{1,3}(?: ?\\. ?\\d{1,3}){3})(?!\\d|[.,]\\d)';
const DOTTED = new RegExp(`(${NUMBERS})(?: ?\\/ ?(\\d{1,2}(?![\\d.])))?(?::\\d{1,5}(?!\\d))?(?![a-z_])`, 'y');
/** The last number of every mask; others need not be tried. */
const MASK_ENDS = /(?:^|\D)(?:0|128|192|224|240|248|252|254|255)$/;
const HEXADECIMAL = /0x[0-9a-f]{8}(?![0-9a-z])/y;
const SLASH = /\/ ?\d{1,2}(?![\d./])/y;
const NUMBER = /\d{1,12}/y;

/** The value that begins at a place of a folded text. */
export function valueAt(text: string, at: number): Found | undefined {
  return (
    macAt(text, at) ?? dottedAt(text, at) ?? address6At(text, at) ?? maskAt(text, at) ?? numberAt(text, at)
  );
}

function macAt(text: string, at: number): Found | undefined {
  const found = match(text, at, MAC);
  if (found === undefined) return undefined;
  const mac = found.replace(/[^0-9a-f]/g, '').replace(/..(?=.)/g, '$&:');
  return { value: { shape: 'mac', mac }, end: at + found.length };
}

function dottedAt(text: string, at: number): Found | undefined {
  DOTTED.lastIndex = at;
  const [whole, numbers, prefix] = DOTTED.exec(text) ?? [];
  if (whole === undefined || numbers === undefined) return undefined;
  const address = asAddress(numbers);
  const mask = MASK_ENDS.test(numbers) ? asMask(numbers) : undefined;
  const length = prefix === undefined ? undefined : asMask(prefix);
  return {
    value: {
      shape: 'dotted',
      ...(address.ok ? { address: address.value } : {}),
      ...(mask?.ok ? { mask: mask.value } : {}),
      ...(length?.ok ? { with: length.value } : {}),
    },
    end: at + whole.length,
  };
}

function address6At(text: string, at: number): Found | undefined {
  const found = match(text, at, IPV6);
  const address = found === undefined ? undefined : asAddress6(found.replace(/\/\d+$/, ''));
  // `::` alone is mostly a typist's ornament.
  if (found === undefined || found.length < 4 || !address?.ok) return undefined;
  return { value: { shape: 'ipv6', address6: address.value }, end: at + found.length };
}

function maskAt(text: string, at: number): Found | undefined {
  const found = match(text, at, HEXADECIMAL) ?? match(text, at, SLASH);
  const mask = found === undefined ? undefined : asMask(found);
  return found !== undefined && mask?.ok
    ? { value: { shape: 'mask', mask: mask.value }, end: at + found.length }
    : undefined;
}

function numberAt(text: string, at: number): Found | undefined {
  const found = match(text, at, NUMBER);
  if (found === undefined) return undefined;
  const mask = asMask(found);
  return { value: { shape: 'number', ...(mask.ok ? { mask: mask.value } : {}) }, end: at + found.length };
}

function match(text: string, at: number, pattern: RegExp): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
