import { IPv6CidrRange } from 'ip-num';
import { type Address6, address6Value } from '../values/address6.js';

/** What an IPv6 address is for, in the words of a troubleshooter. */
export type Address6Kind =
  | 'link-local'
  | 'unique-local'
  | 'global'
  | 'loopback'
  | 'unspecified'
  | 'multicast'
  | 'documentation'
  | 'nat64'
  | 'nat64-local'
  | 'ipv4-mapped'
  | 'tunnel'
  | 'site-local'
  | 'reserved'
  | 'unallocated';

/** A block and what it is for; `isGlobal` is the registry's "Globally Reachable", absent where that says neither. */
export interface SpecialPurpose6Row {
  readonly block: string;
  readonly rfc: string;
  readonly kind: Address6Kind;
  readonly isGlobal?: boolean;
}

/** IANA IPv6 Special-Purpose Address Registry (RFC 6890, RFC 8190). */
export const SPECIAL_PURPOSE6: readonly SpecialPurpose6Row[] = [
  { block: '::1/128', rfc: 'RFC 4291', kind: 'loopback', isGlobal: false },
  { block: '::/128', rfc: 'RFC 4291', kind: 'unspecified', isGlobal: false },
  { block: '::ffff:0:0/96', rfc: 'RFC 4291', kind: 'ipv4-mapped', isGlobal: false },
  { block: '64:ff9b::/96', rfc: 'RFC 6052', kind: 'nat64', isGlobal: true },
  { block: '64:ff9b:1::/48', rfc: 'RFC 8215', kind: 'nat64-local', isGlobal: false },
  { block: '100::/64', rfc: 'RFC 6666', kind: 'reserved', isGlobal: false },
  { block: '100:0:0:1::/64', rfc: 'RFC 9780', kind: 'reserved', isGlobal: false },
  { block: '2001::/23', rfc: 'RFC 2928', kind: 'reserved', isGlobal: false },
  { block: '2001::/32', rfc: 'RFC 4380', kind: 'tunnel' },
  { block: '2001:1::1/128', rfc: 'RFC 7723', kind: 'reserved', isGlobal: true },
  { block: '2001:1::2/128', rfc: 'RFC 8155', kind: 'reserved', isGlobal: true },
  { block: '2001:1::3/128', rfc: 'RFC 9665', kind: 'reserved', isGlobal: true },
  { block: '2001:2::/48', rfc: 'RFC 5180', kind: 'reserved', isGlobal: false },
  { block: '2001:3::/32', rfc: 'RFC 7450', kind: 'global', isGlobal: true },
  { block: '2001:4:112::/48', rfc: 'RFC 7535', kind: 'global', isGlobal: true },
  { block: '2001:10::/28', rfc: 'RFC 4843', kind: 'reserved' },
  { block: '2001:20::/28', rfc: 'RFC 7343', kind: 'reserved', isGlobal: true },
  { block: '2001:30::/28', rfc: 'RFC 9374', kind: 'reserved', isGlobal: true },
  { block: '2001:db8::/32', rfc: 'RFC 3849', kind: 'documentation', isGlobal: false },
  { block: '2002::/16', rfc: 'RFC 3056', kind: 'tunnel' },
  { block: '2620:4f:8000::/48', rfc: 'RFC 7534', kind: 'global', isGlobal: true },
  { block: '3fff::/20', rfc: 'RFC 9637', kind: 'documentation', isGlobal: false },
  { block: '5f00::/16', rfc: 'RFC 9602', kind: 'reserved', isGlobal: false },
  { block: 'fc00::/7', rfc: 'RFC 4193', kind: 'unique-local', isGlobal: false },
  { block: 'fe80::/10', rfc: 'RFC 4291', kind: 'link-local', isGlobal: false },
];

/**
 * Blocks outside that registry: multicast (RFC 4291, section 2.7), the withdrawn site-local addresses
 * (RFC 3879), and the eighth of the whole from which public addresses are given out (IANA IPv6 Global
 * Unicast Address Assignments, from memory; RFC 4291, section 2.4, calls everything else global too).
 */
const ELSEWHERE: readonly SpecialPurpose6Row[] = [
  { block: 'ff00::/8', rfc: 'RFC 4291', kind: 'multicast' },
  { block: 'fec0::/10', rfc: 'RFC 3879', kind: 'site-local' },
  { block: '2000::/3', rfc: 'RFC 4291', kind: 'global' },
];

interface Bounds {
  readonly row: SpecialPurpose6Row;
  readonly first: bigint;
  readonly last: bigint;
}

let laidOut: readonly Bounds[] | undefined;

/** Worked out when first wanted: most calls never see an IPv6 address, and every start would pay for it. */
function narrowestFirst(): readonly Bounds[] {
  laidOut ??= [...SPECIAL_PURPOSE6, ...ELSEWHERE]
    .map((row) => {
      const range = IPv6CidrRange.fromCidr(row.block);
      return { row, first: range.getFirst().getValue(), last: range.getLast().getValue() };
    })
    .sort((one, other) => (one.last - one.first < other.last - other.first ? -1 : 1));
  return laidOut;
}

/** The most specific block that holds the address, if any. */
export function specialPurpose6Row(address: Address6): SpecialPurpose6Row | undefined {
  const value = address6Value(address);
  return narrowestFirst().find(({ first, last }) => first <= value && value <= last)?.row;
}
