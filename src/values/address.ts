import { IPv4 } from 'ip-num';
import { type Mask, parseMask } from './mask.js';
import { notIpv4 } from './not-ipv4.js';
import { fourNumbers, isContiguous, withoutFrills } from './octets.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';

/** An IPv4 address; `bits` is an unsigned 32-bit whole number. */
export interface Address {
  readonly kind: 'ipv4';
  readonly bits: number;
}

/** An address and the mask that was typed with it. */
export interface AddressWithMask {
  readonly address: Address;
  readonly mask: Mask;
}

const BLANK: Address = { kind: 'ipv4', bits: 0 };
const BLANK_WORDS: ReadonlySet<string> = new Set(['empty', 'blank', 'none', '-', '--', '–', '—']);

/**
 * The IPv4 address a person typed. The words for an empty field, and 0.0.0.0, give 0.0.0.0.
 * Refuses a mask, with what to write instead; also an address with a mask (`parseAddressWithMask`).
 */
export function parseAddress(text: string): Result<Address> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const bare = withoutFrills(tidied.value);
  const parts = splitMask(bare);
  const address = bareAddress(parts?.address ?? bare);
  if (!address.ok || parts === undefined) return address;
  return problem({
    id: 'typed.address-with-mask',
    with: { text: quoted(bare), address: showAddress(address.value) },
  });
}

/** An address and its mask typed together: `172.23.40.57/24`, or both dotted with a slash or a space between. */
export function parseAddressWithMask(text: string): Result<AddressWithMask> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const bare = withoutFrills(tidied.value);
  const parts = splitMask(bare);
  const address = bareAddress(parts?.address ?? bare);
  if (!address.ok) return address;
  if (parts === undefined) return problem({ id: 'typed.mask-missing', with: { text: quoted(bare) } });
  const mask = parseMask(parts.mask);
  return mask.ok ? ok({ address: address.value, mask: mask.value }) : mask;
}

/** The address in dotted form. */
export function showAddress(address: Address): string {
  return IPv4.fromNumber(BigInt(address.bits)).toString();
}

/** Whether the address is 0.0.0.0: a field that was left empty. */
export function isBlank(address: Address): boolean {
  return address.bits === 0;
}

function bareAddress(bare: string): Result<Address> {
  if (bare === '') return problem({ id: 'typed.empty' });
  if (BLANK_WORDS.has(bare.toLowerCase())) return ok(BLANK);
  const other = notIpv4(bare);
  if (other !== undefined) return problem(other);
  const octets = fourNumbers(bare, 'address');
  if (!octets.ok) return octets;
  // Below 255 the first number of a mask is also that of a real address, such as 224.0.0.0.
  if (octets.value[0] === 255 && isContiguous(octets.value)) {
    return problem({ id: 'typed.mask-as-address', with: { text: quoted(bare) } });
  }
  return ok({ kind: 'ipv4', bits: Number(new IPv4(octets.value.join('.')).getValue()) });
}

function splitMask(bare: string): { readonly address: string; readonly mask: string } | undefined {
  if (notIpv4(bare) !== undefined) return undefined;
  const dotted = /^(\d+(?:\.\d+){3}),? (\d+(?:\.\d+){3})$/.exec(bare);
  const [, address, mask] = dotted ?? /^([^/]+)(\/.+)$/.exec(bare) ?? [];
  if (address === undefined || mask === undefined) return undefined;
  return { address: withoutFrills(address), mask };
}
