import type { MessageId } from '../messages/say.js';
import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { hasOwnEnds, subnetOf } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

export type HostStanding = 'host' | 'network-address' | 'broadcast-address' | 'blank';

const WORDS = {
  blank: 'subnet.address-blank',
  'network-address': 'subnet.is-network-address',
  'broadcast-address': 'subnet.is-broadcast-address',
  host: 'subnet.is-host',
} as const satisfies Record<HostStanding, MessageId>;

/**
 * Whether a device may have this address with this mask: the lowest and the highest address of a /30 or
 * wider may not be given to a host (RFC 1122, section 3.2.1.3; on a /31 they may: RFC 3021, section 2.1).
 */
export function hostStanding(address: Address, mask: Mask): Worked<HostStanding> {
  const value = standing(address, mask);
  const verdict = { id: WORDS[value], with: { address: showAddress(address) } };
  return { value, lines: value === 'blank' ? [verdict] : [...subnetLines(address, mask), verdict] };
}

function standing(address: Address, mask: Mask): HostStanding {
  if (isBlank(address)) return 'blank';
  if (!hasOwnEnds(mask)) return 'host';
  const subnet = subnetOf(address, mask);
  if (address.bits === subnet.network.bits) return 'network-address';
  return address.bits === subnet.broadcast.bits ? 'broadcast-address' : 'host';
}
