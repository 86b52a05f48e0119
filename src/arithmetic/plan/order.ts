import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import { temporaryAddress } from '../proposals/temporary-address.js';
import type { Stretch } from './room.js';

/** No address of a usual network is further off than this. */
const NEAR = 255;

/**
 * How to set new cameras that come with one address, from a computer in their range: one on the switch at a time,
 * set, test, next, and the computer put back. The computer keeps clear of `avoid` and of the range handed out.
 */
export function orderLines(
  comesWith: Address,
  count: number,
  avoid: readonly Address[],
  dhcp: Stretch | undefined,
): readonly Sentence[] {
  const handedOut = dhcp ? near(dhcp, comesWith) : [];
  const { lines, cautions, setUp, putBack } = temporaryAddress(comesWith, undefined, [
    ...avoid,
    ...handedOut,
  ]);
  const said = { address: showAddress(comesWith), count };
  return [
    { id: count > 1 ? 'plan.default-shared' : 'plan.default-one', with: said },
    ...lines,
    ...cautions,
    { id: 'plan.before-they-go-up' },
    ...(count > 1 ? [{ id: 'plan.one-at-a-time' } as const] : []),
    ...setUp,
    { id: 'plan.set' },
    { id: 'plan.test' },
    ...(count > 1 ? [{ id: 'plan.next' } as const, { id: 'plan.next-silent' } as const] : []),
    ...putBack,
  ];
}

function near(dhcp: Stretch, { bits }: Address): readonly Address[] {
  const from = Math.max(dhcp.from, bits - NEAR);
  const length = Math.max(0, Math.min(dhcp.to, bits + NEAR) - from + 1);
  return Array.from({ length }, (_, at) => ({ kind: 'ipv4', bits: from + at }));
}
