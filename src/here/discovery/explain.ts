import { temporaryAddress } from '../../arithmetic/proposals/temporary-address.js';
import { showBlock } from '../../arithmetic/show-block.js';
import { sameSubnet } from '../../arithmetic/subnet.js';
import { type Sentence, say } from '../../messages/say.js';
import { type Address, type AddressWithMask, showAddress } from '../../values/address.js';
import { showMask } from '../../values/mask.js';
import { isLocal } from '../may-touch.js';
import type { Found } from './answer.js';

/** Whether a camera that answered can be opened from this computer, and what to do where not. */
export interface Explained {
  readonly camera: Found;
  /** The address of the camera that the sentence is about. */
  readonly address?: Address;
  readonly isInRange: boolean;
  /** An address for this computer to hold for a while; `temporaryAddress` says how. */
  readonly temporary?: AddressWithMask;
  readonly sentence: Sentence;
}

/** One sentence for each camera found; `own` are the addresses of this computer. */
export function explain(found: readonly Found[], own: readonly AddressWithMask[]): readonly Explained[] {
  const taken = [...own.map(({ address }) => address), ...found.flatMap(({ addresses }) => addresses)];
  return found.map((camera) => explained(camera, own, taken));
}

function explained(camera: Found, own: readonly AddressWithMask[], taken: readonly Address[]): Explained {
  const who = { camera: nameOf(camera) };
  for (const address of camera.addresses) {
    const near = own.find((one) => sameSubnet(one.address, one.mask, address));
    if (near === undefined) continue;
    const said = { ...who, address: showAddress(address), range: showBlock(near) };
    return { camera, address, isInRange: true, sentence: { id: 'here.camera-inside', with: said } };
  }
  const address = camera.addresses.find(isLocal) ?? camera.addresses[0];
  if (address === undefined) {
    return { camera, isInRange: false, sentence: { id: 'here.camera-no-address', with: who } };
  }
  return { camera, address, isInRange: false, ...wayTo(address, who, taken) };
}

function wayTo(
  address: Address,
  who: { readonly camera: string },
  taken: readonly Address[],
): Pick<Explained, 'temporary' | 'sentence'> {
  const said = { ...who, address: showAddress(address) };
  if (!isLocal(address)) return { sentence: { id: 'here.camera-elsewhere', with: said } };
  const temporary = temporaryAddress(address, undefined, taken).value;
  if (temporary === undefined) return { sentence: { id: 'here.camera-outside-no-room', with: said } };
  const settings = { temporary: showAddress(temporary.address), mask: showMask(temporary.mask) };
  return { temporary, sentence: { id: 'here.camera-outside', with: { ...said, ...settings } } };
}

function nameOf({ names: [name] }: Found): string {
  return name === undefined ? say('here.camera-without-name') : say('here.camera-named', { name });
}
