import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import { type Mask, showMask } from '../../values/mask.js';
import { hostStanding } from '../host-standing.js';
import { subnetOf } from '../subnet.js';
import { subnetLines } from '../subnet-lines.js';
import type { Worked } from '../worked.js';

/** What to type into a camera that keeps its address. The second DNS server is told in words: it is the provider's. */
export interface CameraSettings {
  readonly address: Address;
  readonly mask: Mask;
  readonly gateway: Address;
  readonly dns: Address;
}

/** Settings for a camera, absent where no address is free; with what to check before they are used. */
export interface FreeAddress extends Worked<CameraSettings | undefined> {
  readonly checks: readonly Sentence[];
}

/**
 * An address for a camera in the router's network: not the network's, the broadcast, the router's, nor
 * a known device's, and outside the DHCP range (either end may come first; without both, it says so).
 * The highest is taken first; the two ends come last, as routers mostly stand there (common practice,
 * no source). What to check follows RFC 5227: an address is asked for before it is used.
 */
export function freeAddress(
  router: Address,
  mask: Mask,
  dhcpFirst: Address | undefined,
  dhcpLast: Address | undefined,
  known: readonly Address[],
): FreeAddress {
  const standing = hostStanding(router, mask);
  if (standing.value !== 'host') return { value: undefined, lines: standing.lines, checks: [] };
  const dhcp = rangeOf(dhcpFirst, dhcpLast);
  const taken = new Set([router.bits, ...known.map(({ bits }) => bits)]);
  const address = highest(router, mask, dhcp, taken);
  const lines = [...subnetLines(router, mask), dhcpLine(dhcp)];
  if (address === undefined) return { value: undefined, lines: [...lines, NONE_FREE], checks: [] };
  const said = {
    address: showAddress(address),
    mask: showMask(mask),
    router: showAddress(router),
  };
  return {
    value: { address, mask, gateway: router, dns: router },
    lines: [
      ...lines,
      { id: 'proposal.free', with: said },
      { id: 'proposal.free-settings', with: said },
      { id: 'proposal.free-dns', with: said },
    ],
    checks: [
      { id: 'proposal.check-unplug', with: said },
      { id: 'proposal.check-arp', with: said },
      { id: 'proposal.check-list', with: said },
    ],
  };
}

interface DhcpRange {
  readonly from: number;
  readonly to: number;
}

const NONE_FREE: Sentence = { id: 'proposal.free-none' };

function rangeOf(one: Address | undefined, other: Address | undefined): DhcpRange | undefined {
  if (one === undefined || other === undefined) return undefined;
  return { from: Math.min(one.bits, other.bits), to: Math.max(one.bits, other.bits) };
}

function dhcpLine(dhcp: DhcpRange | undefined): Sentence {
  if (dhcp === undefined) return { id: 'proposal.dhcp-unknown' };
  const [from, to] = [dhcp.from, dhcp.to].map((bits) => showAddress({ kind: 'ipv4', bits }));
  return { id: 'proposal.dhcp', with: { from: from ?? '', to: to ?? '' } };
}

function highest(
  router: Address,
  mask: Mask,
  dhcp: DhcpRange | undefined,
  taken: ReadonlySet<number>,
): Address | undefined {
  const { first, last } = subnetOf(router, mask);
  const isInDhcp = (bits: number): boolean => dhcp !== undefined && dhcp.from <= bits && bits <= dhcp.to;
  let bits = last.bits - 1;
  while (bits > first.bits) {
    if (dhcp !== undefined && isInDhcp(bits)) bits = dhcp.from - 1;
    else if (taken.has(bits)) bits--;
    else return { kind: 'ipv4', bits };
  }
  return [last, first].find((end) => !taken.has(end.bits) && !isInDhcp(end.bits));
}
