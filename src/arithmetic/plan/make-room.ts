import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import type { Mask } from '../../values/mask.js';
import { subnetOf } from '../subnet.js';
import { gapsIn, type Stretch, sizeOf } from './room.js';

/**
 * The widest part of the range a router hands out, from its lower end, that leaves so many more addresses free;
 * absent where nothing would be left to hand out. `taken` are the addresses in use.
 */
export function smallerRange(
  router: Address,
  mask: Mask,
  dhcp: Stretch,
  taken: readonly Stretch[],
  missing: number,
): Stretch | undefined {
  const { first, last } = subnetOf(router, mask);
  const from = Math.max(dhcp.from, first.bits);
  let wanted = missing;
  for (const gap of [...gapsIn(router, mask, taken)].reverse()) {
    const inside = { from: Math.max(gap.from, from), to: Math.min(gap.to, dhcp.to, last.bits) };
    if (sizeOf(inside) <= 0) continue;
    if (sizeOf(inside) < wanted) wanted -= sizeOf(inside);
    else {
      const to = inside.to - wanted;
      return to < from ? undefined : { from, to };
    }
  }
  return undefined;
}

/** What would make room for the cameras that have no address; nothing where each has one. */
export function roomLines(
  router: Address,
  mask: Mask,
  dhcp: Stretch | undefined,
  taken: readonly Stretch[],
  fits: number,
  missing: number,
): readonly Sentence[] {
  if (missing === 0) return [];
  const tooFew: Sentence = { id: 'plan.too-few', with: { fits, missing } };
  const smaller = dhcp && smallerRange(router, mask, dhcp, taken, missing);
  if (smaller) {
    const show = (bits: number): string => showAddress({ kind: 'ipv4', bits });
    const said = { from: show(smaller.from), to: show(smaller.to), count: sizeOf(smaller) };
    return [tooFew, { id: 'plan.smaller-range', with: said }, { id: 'plan.smaller-range-leases' }];
  }
  const most = gapsIn(router, mask, taken).reduce((sum, gap) => sum + sizeOf(gap), 0);
  return [tooFew, { id: 'plan.too-small', with: { most } }];
}
