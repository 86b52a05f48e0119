import type { Address } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { blockBounds } from './block-bounds.js';

/** A subnet; `hosts` counts the addresses a device may have, `first` and `last` are the ends of those. */
export interface Subnet {
  readonly network: Address;
  readonly broadcast: Address;
  readonly first: Address;
  readonly last: Address;
  readonly hosts: number;
}

/**
 * The subnet an address belongs to (RFC 4632, section 3.1; network and broadcast address are not for
 * hosts: RFC 1122, section 3.2.1.3). A /31 has two hosts and no broadcast (RFC 3021, section 2.1), a
 * /32 has one; there `network` and `broadcast` are simply the lowest and the highest address.
 */
export function subnetOf(address: Address, mask: Mask): Subnet {
  const { first, last } = blockBounds(address.bits, mask.prefix);
  const kept = hasOwnEnds(mask) ? 1 : 0;
  return {
    network: ipv4(first),
    broadcast: ipv4(last),
    first: ipv4(first + kept),
    last: ipv4(last - kept),
    hosts: last - first + 1 - 2 * kept,
  };
}

/** Whether `other` is on-link for a host with this address and mask (RFC 1122, section 3.3.1.1). */
export function sameSubnet(address: Address, mask: Mask, other: Address): boolean {
  const { first, last } = blockBounds(address.bits, mask.prefix);
  return first <= other.bits && other.bits <= last;
}

/** Whether the lowest and highest address of a subnet are kept for the network and for broadcasts: /30 and wider. */
export function hasOwnEnds(mask: Mask): boolean {
  return mask.prefix <= 30;
}

function ipv4(bits: number): Address {
  return { kind: 'ipv4', bits };
}
