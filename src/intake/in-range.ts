import type { Address } from '../values/address.js';
import type { Mask } from '../values/mask.js';

/** A mask of 31 or 32 ones holds too few for another device to be meant, and one of none holds everything. */
export function inRange(address: Address, { prefix }: Mask, other: Address): boolean {
  const size = 2 ** (32 - prefix);
  return prefix > 0 && prefix < 31 && Math.floor(address.bits / size) === Math.floor(other.bits / size);
}
