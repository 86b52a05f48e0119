import type { MessageId } from '../messages/say.js';
import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { addressKind } from './address-kind.js';
import type { AddressKind } from './special-purpose.js';
import { sameSubnet } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

export type DnsStanding = 'blank' | 'router' | 'on-site' | 'private-elsewhere' | 'public';

const WORDS = {
  blank: 'subnet.dns-blank',
  router: 'subnet.dns-router',
  'on-site': 'subnet.inside',
  'private-elsewhere': 'subnet.dns-private-elsewhere',
  public: 'subnet.dns-public',
} as const satisfies Record<DnsStanding, MessageId>;

/** Kinds that a camera may reach through its router: a provider's name server may stand in the shared range. */
const BEYOND_ROUTER: ReadonlySet<AddressKind> = new Set(['public', 'shared', 'documentation']);

/**
 * Where a camera's name server stands: `on-site` inside the camera's own subnet (RFC 1122, section
 * 3.3.1.1) but not the router, `private-elsewhere` in another range that the internet does not carry
 * (RFC 1918, and every other block of RFC 6890 that no name server out there can have), else `public`.
 */
export function dnsStanding(dns: Address, router: Address, camera: Address, mask: Mask): Worked<DnsStanding> {
  const said = { dns: showAddress(dns), other: showAddress(dns) };
  if (isBlank(dns)) return { value: 'blank', lines: [{ id: WORDS.blank }] };
  if (dns.bits === router.bits) return { value: 'router', lines: [{ id: WORDS.router, with: said }] };
  const subnet = subnetLines(camera, mask);
  if (sameSubnet(camera, mask, dns)) {
    return { value: 'on-site', lines: [...subnet, { id: WORDS['on-site'], with: said }] };
  }
  const outside = [...subnet, { id: 'subnet.outside', with: said } as const];
  const kind = addressKind(dns);
  return BEYOND_ROUTER.has(kind.value)
    ? { value: 'public', lines: [...outside, { id: WORDS.public, with: said }] }
    : {
        value: 'private-elsewhere',
        lines: [...outside, ...kind.lines, { id: WORDS['private-elsewhere'], with: said }],
      };
}
