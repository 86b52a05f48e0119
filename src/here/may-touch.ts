import { addressKind } from '../arithmetic/address-kind.js';
import type { AddressKind } from '../arithmetic/special-purpose.js';
import type { Address } from '../values/address.js';

/** What stands on a site's own network: RFC 1918, RFC 6598 and RFC 3927. */
const LOCAL: ReadonlySet<AddressKind> = new Set<AddressKind>(['private', 'shared', 'self-assigned']);

/** Whether it is an address at all: what is touched on the network is looked at again however it came here. */
export function isAddress(address: Address): boolean {
  const { bits } = address;
  return Number.isInteger(bits) && bits >= 0 && bits <= 0xffff_ffff;
}

/** Whether an address can stand on a local network, so that trying it reaches no stranger. */
export function isLocal(address: Address): boolean {
  return isAddress(address) && LOCAL.has(addressKind(address).value);
}
