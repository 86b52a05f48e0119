import type { Address } from '../../values/address.js';
import type { Mask } from '../../values/mask.js';
import { type Subnet, subnetOf } from '../subnet.js';

/** A stretch of addresses, both ends in it, as unsigned 32 bit numbers. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** How many addresses a stretch holds. */
export function sizeOf({ from, to }: Stretch): number {
  return to - from + 1;
}

/**
 * What is left of the hosts of a network (RFC 1122, section 3.2.1.3; both addresses of a /31, RFC 3021) when these stretches are
 * taken: the gaps, lowest first. The stretches may overlap, and reach outside the network.
 */
export function gapsIn(router: Address, mask: Mask, taken: readonly Stretch[]): readonly Stretch[] {
  const { first, last } = subnetOf(router, mask);
  const gaps: Stretch[] = [];
  let next = first.bits;
  for (const { from, to } of [...taken].sort((a, b) => a.from - b.from)) {
    if (from > last.bits) break;
    if (from > next) gaps.push({ from: next, to: from - 1 });
    next = Math.max(next, to + 1);
  }
  if (next <= last.bits) gaps.push({ from: next, to: last.bits });
  return gaps;
}

/**
 * So many addresses of the gaps, ascending: in one run where it fits, the highest such, clear of the lowest and highest
 * host where that is possible, as routers mostly stand there (common practice, no source); else from the top down.
 */
export function quietRun(
  gaps: readonly Stretch[],
  { first, last }: Subnet,
  count: number,
): readonly number[] {
  const inner = gaps.map(({ from, to }) => ({
    from: Math.max(from, first.bits + 1),
    to: Math.min(to, last.bits - 1),
  }));
  const whole = [...gaps, ...inner].filter((gap) => sizeOf(gap) >= count).at(-1);
  if (whole) return Array.from({ length: count }, (_, at) => whole.to - count + 1 + at);
  const picked: number[] = [];
  for (const { from, to } of [...gaps].reverse()) {
    for (let bits = to; bits >= from && picked.length < count; bits--) picked.push(bits);
  }
  return picked.reverse();
}
