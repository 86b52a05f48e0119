import type { Sentence } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { sameSubnet } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

export type Neighbours = 'both' | 'only-camera' | 'only-computer' | 'neither';

/**
 * Whether camera and computer take each other for neighbours, each by its own mask (RFC 1122, section
 * 3.3.1.1). `only-camera`: the camera takes the computer for a neighbour, not the other way round.
 */
export function seenAsNeighbour(
  camera: Address,
  cameraMask: Mask,
  computer: Address,
  computerMask: Mask,
): Worked<Neighbours> {
  const byCamera = sameSubnet(camera, cameraMask, computer);
  const byComputer = sameSubnet(computer, computerMask, camera);
  return {
    value: byCamera ? (byComputer ? 'both' : 'only-camera') : byComputer ? 'only-computer' : 'neither',
    lines: [
      ...subnetLines(camera, cameraMask),
      decision(computer, byCamera),
      ...subnetLines(computer, computerMask),
      decision(camera, byComputer),
    ],
  };
}

function decision(other: Address, isInside: boolean): Sentence {
  return { id: isInside ? 'subnet.inside' : 'subnet.outside', with: { other: showAddress(other) } };
}
