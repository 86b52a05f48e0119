import type { MessageId, Sentence } from '../../messages/say.js';
import { type Address, isBlank, showAddress } from '../../values/address.js';
import { addressKind } from '../address-kind.js';
import { specialPurposeRow } from '../special-purpose.js';
import type { Worked } from '../worked.js';

/**
 * What stands between a router and the internet. `direct`: nothing, seen so from outside; `direct-unseen`:
 * nothing, as far as its own address tells; `translated`: its address is public, yet the internet sees
 * another; `carrier`: a translator of the provider's; `another-router`: a second router here or a
 * translator of the provider's, not told apart; `double`: a second router here; `both`: that and the
 * provider's; `no-address`: the router has no usable address.
 */
export type WanStanding =
  | 'direct'
  | 'direct-unseen'
  | 'translated'
  | 'carrier'
  | 'another-router'
  | 'double'
  | 'both'
  | 'no-address'
  | 'unknown';

/** Addresses as far as they are known: the router's outer one, that of a router beyond it, the one the internet sees. */
export interface WanAddresses {
  readonly wan?: Address | undefined;
  readonly outer?: Address | undefined;
  readonly seen?: Address | undefined;
}

const WORDS = {
  direct: 'nat.direct',
  'direct-unseen': 'nat.direct-unseen',
  translated: 'nat.translated',
  carrier: 'nat.carrier',
  'another-router': 'nat.another-router',
  double: 'nat.double',
  both: 'nat.both',
  'no-address': 'nat.no-address',
  unknown: 'nat.unknown',
} as const satisfies Record<WanStanding, MessageId>;

/** What an outer address says of the network beyond it. */
export type Beyond = 'internet' | 'private' | 'carrier' | 'nothing';

/**
 * What lies beyond a router with this outer address. 100.64.0.0/10 is shared by a provider's customers
 * (RFC 6598), 192.0.0.0/29 stands at a translator over IPv6 (RFC 7335), both are the provider's.
 * Documentation addresses count as public, so that examples can be reckoned.
 */
export function beyond(address: Address): Beyond {
  const { value } = addressKind(address);
  if (value === 'public' || value === 'documentation') return 'internet';
  if (value === 'private') return 'private';
  if (value === 'shared') return 'carrier';
  return specialPurposeRow(address)?.block === '192.0.0.0/29' && !isBlank(address) ? 'carrier' : 'nothing';
}

/**
 * How a router stands to the internet, from its outer (WAN) address, that of a router beyond it where
 * there is one, and the address the internet sees (RFC 1918, RFC 6598, RFC 7335; several translators in
 * line: RFC 5128, section 3.3, from memory).
 */
export function wanStanding(addresses: WanAddresses): Worked<WanStanding> {
  const value = standing(addresses);
  return { value, lines: [...given(addresses), { id: WORDS[value] }] };
}

function standing({ wan, outer, seen }: WanAddresses): WanStanding {
  if (wan === undefined) return 'unknown';
  const first = beyond(wan);
  if (first === 'nothing') return 'no-address';
  if (first === 'carrier') return 'carrier';
  if (first === 'internet') {
    if (seen === undefined) return 'direct-unseen';
    return seen.bits === wan.bits ? 'direct' : 'translated';
  }
  if (outer === undefined) return 'another-router';
  const second = beyond(outer);
  if (second === 'nothing') return 'no-address';
  if (second === 'private') return 'another-router';
  const isTranslatedAgain = second === 'carrier' || (seen !== undefined && seen.bits !== outer.bits);
  return isTranslatedAgain ? 'both' : 'double';
}

function given({ wan, outer, seen }: WanAddresses): readonly Sentence[] {
  return [
    ...(wan === undefined ? [] : named('nat.wan-is', wan)),
    ...(outer === undefined ? [] : named('nat.outer-is', outer)),
    ...(seen === undefined ? [] : [{ id: 'nat.seen-is', with: { address: showAddress(seen) } } as const]),
  ];
}

function named(id: 'nat.wan-is' | 'nat.outer-is', address: Address): readonly Sentence[] {
  return [{ id, with: { address: showAddress(address) } }, ...addressKind(address).lines];
}
