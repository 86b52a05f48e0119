import type { Sentence } from '../../messages/say.js';
import { type Address, type AddressWithMask, isBlank, showAddress } from '../../values/address.js';
import { type Mask, showMask } from '../../values/mask.js';
import { addressKind } from '../address-kind.js';
import { subnetOf } from '../subnet.js';
import { subnetLines } from '../subnet-lines.js';
import type { Worked } from '../worked.js';

/** An address for a computer to hold for a while, absent where there is none; with how to set it and put it back. */
export interface TemporaryAddress extends Worked<AddressWithMask | undefined> {
  readonly cautions: readonly Sentence[];
  readonly setUp: readonly Sentence[];
  readonly putBack: readonly Sentence[];
}

/** The mask that small networks mostly have (common practice, no source). */
const USUAL: Mask = { kind: 'mask', prefix: 24 };
/** The mask of self-assigned addresses (RFC 3927, section 2.1). */
const SELF_ASSIGNED: Mask = { kind: 'mask', prefix: 16 };

/**
 * An address beside the camera's, so that a computer on the same cable reaches a camera whose range it is
 * not in: the nearest one that a device may have and that is not in `avoid`. The lowest and the highest
 * come last, as routers mostly stand there (common practice, no source).
 */
export function temporaryAddress(
  camera: Address,
  cameraMask: Mask | undefined,
  avoid: readonly Address[],
): TemporaryAddress {
  const nothing = { cautions: [], setUp: [], putBack: [] };
  if (isBlank(camera)) return { value: undefined, lines: [{ id: 'subnet.address-blank' }], ...nothing };
  const mask = cameraMask ?? usualMask(camera);
  const said = { camera: showAddress(camera), mask: showMask(mask) };
  const assumed: Sentence = { id: 'proposal.mask-assumed', with: said };
  const sum = [...(cameraMask === undefined ? [assumed] : []), ...subnetLines(camera, mask)];
  const address = nearest(camera, mask, avoid);
  if (address === undefined) {
    return { value: undefined, lines: [...sum, { id: 'proposal.temporary-none', with: said }], ...nothing };
  }
  const all = { ...said, address: showAddress(address) };
  return {
    value: { address, mask },
    lines: [...sum, { id: 'proposal.temporary', with: all }],
    cautions: [{ id: 'proposal.temporary-no-internet' }],
    setUp: [
      { id: 'proposal.temporary-note-old' },
      { id: 'proposal.temporary-cable' },
      { id: 'proposal.temporary-set', with: all },
      { id: 'proposal.temporary-open', with: all },
    ],
    putBack: [{ id: 'proposal.temporary-put-back', with: all }, { id: 'proposal.temporary-check' }],
  };
}

function usualMask(camera: Address): Mask {
  return addressKind(camera).value === 'self-assigned' ? SELF_ASSIGNED : USUAL;
}

function nearest(camera: Address, mask: Mask, avoid: readonly Address[]): Address | undefined {
  const { first, last } = subnetOf(camera, mask);
  const taken = new Set([camera.bits, ...avoid.map(({ bits }) => bits)]);
  const isInside = (bits: number): boolean => first.bits < bits && bits < last.bits;
  // Each address in the way costs one step out on one side, so that this many steps always do.
  for (let away = 1; away <= taken.size + 1; away++) {
    const found = [camera.bits + away, camera.bits - away].find((bits) => isInside(bits) && !taken.has(bits));
    if (found !== undefined) return { kind: 'ipv4', bits: found };
  }
  return [last, first].find(({ bits }) => !taken.has(bits));
}
