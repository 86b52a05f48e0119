import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { sameSubnet } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

/**
 * Whether the camera's address lies in the range of the router's local network, by the router's mask
 * (RFC 1122, section 3.3.1.1). An empty address lies in no range.
 */
export function sameRange(camera: Address, router: Address, routerMask: Mask): Worked<'same' | 'other'> {
  if (isBlank(camera)) return { value: 'other', lines: [{ id: 'subnet.address-blank' }] };
  const isSame = sameSubnet(router, routerMask, camera);
  const verdict = isSame ? 'subnet.inside' : 'subnet.outside';
  return {
    value: isSame ? 'same' : 'other',
    lines: [...subnetLines(router, routerMask), { id: verdict, with: { other: showAddress(camera) } }],
  };
}
