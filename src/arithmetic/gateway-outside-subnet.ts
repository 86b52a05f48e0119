import type { MessageId } from '../messages/say.js';
import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { hasOwnEnds, sameSubnet, subnetOf } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

export type GatewayStanding =
  | 'inside'
  | 'outside'
  | 'own-address'
  | 'network-address'
  | 'broadcast-address'
  | 'blank';

const WORDS = {
  blank: 'subnet.gateway-blank',
  'own-address': 'subnet.gateway-own-address',
  outside: 'subnet.outside',
  'network-address': 'subnet.gateway-network-address',
  'broadcast-address': 'subnet.gateway-broadcast-address',
  inside: 'subnet.inside',
} as const satisfies Record<GatewayStanding, MessageId>;

/**
 * Where a default gateway stands as seen from a host: it must be another host on a network the host is
 * directly connected to (RFC 1122, sections 3.3.1.1 and 3.2.1.3). Only meaningful for a host that has
 * an address of its own.
 */
export function gatewayStanding(address: Address, mask: Mask, gateway: Address): Worked<GatewayStanding> {
  const value = standing(address, mask, gateway);
  const verdict = { id: WORDS[value], with: { other: showAddress(gateway) } };
  const needsNoSum = value === 'blank' || value === 'own-address';
  return { value, lines: needsNoSum ? [verdict] : [...subnetLines(address, mask), verdict] };
}

function standing(address: Address, mask: Mask, gateway: Address): GatewayStanding {
  if (isBlank(gateway)) return 'blank';
  if (gateway.bits === address.bits) return 'own-address';
  if (!sameSubnet(address, mask, gateway)) return 'outside';
  const subnet = subnetOf(address, mask);
  if (hasOwnEnds(mask) && gateway.bits === subnet.network.bits) return 'network-address';
  if (hasOwnEnds(mask) && gateway.bits === subnet.broadcast.bits) return 'broadcast-address';
  return 'inside';
}
