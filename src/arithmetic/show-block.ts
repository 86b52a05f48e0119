import { type AddressWithMask, showAddress } from '../values/address.js';
import { subnetOf } from './subnet.js';

/** The network an address belongs to in CIDR notation, such as `172.23.40.0/24` (RFC 4632, section 3.1). */
export function showBlock({ address, mask }: AddressWithMask): string {
  return `${showAddress(subnetOf(address, mask).network)}/${mask.prefix}`;
}
