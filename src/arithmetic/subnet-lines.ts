import type { Sentence } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import { type Mask, showMask } from '../values/mask.js';
import { hasOwnEnds, subnetOf } from './subnet.js';

/** How the subnet of an address is worked out: its network, the block inside one number, its hosts. */
export function subnetLines(address: Address, mask: Mask): readonly Sentence[] {
  const subnet = subnetOf(address, mask);
  const said = {
    address: showAddress(address),
    mask: showMask(mask),
    prefix: mask.prefix,
    network: showAddress(subnet.network),
    first: showAddress(subnet.first),
    last: showAddress(subnet.last),
  };
  return [
    { id: 'subnet.network', with: said },
    ...blockLine(address, mask),
    { id: hasOwnEnds(mask) ? 'subnet.hosts' : hostsWithoutEnds(mask), with: said },
  ];
}

/** Which block an address falls into, where the mask cuts through one of the four numbers. */
function blockLine(address: Address, mask: Mask): readonly Sentence[] {
  const bitsInNumber = mask.prefix % 8;
  if (bitsInNumber === 0) return [];
  const position = Math.floor(mask.prefix / 8) + 1;
  const size = 2 ** (8 - bitsInNumber);
  const number = Math.floor(address.bits / 256 ** (4 - position)) % 256;
  const from = number - (number % size);
  return [{ id: 'subnet.block', with: { position, size, number, from, to: from + size - 1 } }];
}

function hostsWithoutEnds(mask: Mask): 'subnet.hosts-two' | 'subnet.hosts-one' {
  return mask.prefix === 31 ? 'subnet.hosts-two' : 'subnet.hosts-one';
}
