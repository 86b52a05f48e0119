import { type Address, showAddress } from '../../values/address.js';
import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';
import type { Answered } from './forward-standing.js';
import { nat64Address } from './nat64-address.js';

/** What the phone's own network carries. */
export type PhoneNetwork = 'ipv4' | 'ipv6-only' | 'dont-know';
/** How the app names the camera's site: by a name, or by the four numbers themselves. */
export type Target = 'name' | 'numbers';

type Decides = 'phone-network' | 'phone-translates';

/**
 * Whether a phone can call a site that has IPv4 only. An IPv6-only network translates names (DNS64,
 * RFC 6147, with NAT64, RFC 6146); four numbers typed into an app only pass where the phone translates
 * them itself (464XLAT, RFC 6877). `site` is the address to be called, for the worked line.
 */
export function phoneReach(
  network: PhoneNetwork,
  target: Target,
  translates: Answered,
  site?: Address,
): Worked<Judged<Decides>> {
  if (network === 'ipv4') return { value: { verdict: 'fine' }, lines: [{ id: 'nat.phone-ipv4' }] };
  if (target === 'name') return { value: { verdict: 'fine' }, lines: [{ id: 'nat.phone-by-name' }] };
  if (translates === 'yes') return { value: { verdict: 'fine' }, lines: [{ id: 'nat.phone-translates' }] };
  if (network === 'dont-know') {
    return {
      value: { verdict: 'doubtful', decides: 'phone-network' },
      lines: [{ id: 'nat.phone-network-unknown' }],
    };
  }
  const embedded = site === undefined ? undefined : nat64Address(site);
  const shown =
    site === undefined || embedded === undefined
      ? []
      : [{ id: 'nat.phone-embedded', with: { address: showAddress(site), embedded } } as const];
  return translates === 'no'
    ? { value: { verdict: 'impossible' }, lines: [{ id: 'nat.phone-numbers-lost' }, ...shown] }
    : {
        value: { verdict: 'doubtful', decides: 'phone-translates' },
        lines: [{ id: 'nat.phone-numbers-doubtful' }, ...shown],
      };
}
