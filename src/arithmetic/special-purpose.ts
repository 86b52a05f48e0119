import type { Address } from '../values/address.js';
import { boundsOfBlock } from './block-bounds.js';

/** What an address is for, in the words of a troubleshooter. */
export type AddressKind =
  | 'private'
  | 'self-assigned'
  | 'shared'
  | 'documentation'
  | 'loopback'
  | 'multicast'
  | 'reserved'
  | 'this-network'
  | 'public';

/** A row of the registry; `isGlobal` is its "Globally Reachable" column, absent where the block was withdrawn. */
export interface SpecialPurposeRow {
  readonly block: string;
  readonly rfc: string;
  readonly kind: AddressKind;
  readonly isGlobal?: boolean;
}

/**
 * IANA IPv4 Special-Purpose Address Registry (RFC 6890, RFC 8190). Blocks that are reachable from
 * everywhere count as public, except the two anycast addresses inside the protocol assignments.
 */
export const SPECIAL_PURPOSE: readonly SpecialPurposeRow[] = [
  { block: '0.0.0.0/8', rfc: 'RFC 791', kind: 'this-network', isGlobal: false },
  { block: '0.0.0.0/32', rfc: 'RFC 1122', kind: 'this-network', isGlobal: false },
  { block: '10.0.0.0/8', rfc: 'RFC 1918', kind: 'private', isGlobal: false },
  { block: '100.64.0.0/10', rfc: 'RFC 6598', kind: 'shared', isGlobal: false },
  { block: '127.0.0.0/8', rfc: 'RFC 1122', kind: 'loopback', isGlobal: false },
  { block: '169.254.0.0/16', rfc: 'RFC 3927', kind: 'self-assigned', isGlobal: false },
  { block: '172.16.0.0/12', rfc: 'RFC 1918', kind: 'private', isGlobal: false },
  { block: '192.0.0.0/24', rfc: 'RFC 6890', kind: 'reserved', isGlobal: false },
  { block: '192.0.0.0/29', rfc: 'RFC 7335', kind: 'reserved', isGlobal: false },
  { block: '192.0.0.8/32', rfc: 'RFC 7600', kind: 'reserved', isGlobal: false },
  { block: '192.0.0.9/32', rfc: 'RFC 7723', kind: 'reserved', isGlobal: true },
  { block: '192.0.0.10/32', rfc: 'RFC 8155', kind: 'reserved', isGlobal: true },
  { block: '192.0.0.170/32', rfc: 'RFC 8880', kind: 'reserved', isGlobal: false },
  { block: '192.0.0.171/32', rfc: 'RFC 8880', kind: 'reserved', isGlobal: false },
  { block: '192.0.2.0/24', rfc: 'RFC 5737', kind: 'documentation', isGlobal: false },
  { block: '192.31.196.0/24', rfc: 'RFC 7535', kind: 'public', isGlobal: true },
  { block: '192.52.193.0/24', rfc: 'RFC 7450', kind: 'public', isGlobal: true },
  { block: '192.88.99.0/24', rfc: 'RFC 7526', kind: 'reserved' },
  { block: '192.168.0.0/16', rfc: 'RFC 1918', kind: 'private', isGlobal: false },
  { block: '192.175.48.0/24', rfc: 'RFC 7534', kind: 'public', isGlobal: true },
  { block: '198.18.0.0/15', rfc: 'RFC 2544', kind: 'reserved', isGlobal: false },
  { block: '198.51.100.0/24', rfc: 'RFC 5737', kind: 'documentation', isGlobal: false },
  { block: '203.0.113.0/24', rfc: 'RFC 5737', kind: 'documentation', isGlobal: false },
  { block: '240.0.0.0/4', rfc: 'RFC 1112', kind: 'reserved', isGlobal: false },
  { block: '255.255.255.255/32', rfc: 'RFC 8190', kind: 'reserved', isGlobal: false },
];

const NARROWEST_FIRST = SPECIAL_PURPOSE.map((row) => ({ row, ...boundsOfBlock(row.block) })).sort(
  (one, other) => one.last - one.first - (other.last - other.first),
);

/** The most specific row of the registry that holds the address, if any. */
export function specialPurposeRow(address: Address): SpecialPurposeRow | undefined {
  return NARROWEST_FIRST.find(({ first, last }) => first <= address.bits && address.bits <= last)?.row;
}
