import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import type { Mask } from '../../values/mask.js';
import { hostStanding } from '../host-standing.js';
import { subnetOf } from '../subnet.js';
import { subnetLines } from '../subnet-lines.js';
import type { Worked } from '../worked.js';
import { conflictsAt } from './conflicts.js';
import { roomLines } from './make-room.js';
import { orderLines } from './order.js';
import { gapsIn, quietRun, type Stretch, sizeOf } from './room.js';
import { tableLines } from './table.js';

/** A site, and the cameras to add to it. */
export interface PlanSite {
  readonly router: Address;
  readonly mask: Mask;
  /** The range the router hands out, where it is known. */
  readonly dhcp: Stretch | undefined;
  readonly known: readonly Address[];
  readonly cameras: readonly string[];
  /** The address that the new cameras all come with, where they share one. */
  readonly defaultAddress: Address | undefined;
}

/** One camera's address. */
export interface Planned {
  readonly camera: string;
  readonly address: Address;
}

export interface AddressPlan {
  readonly cameras: readonly Planned[];
  /** Cameras for which there was no address. */
  readonly without: readonly string[];
  /** Free addresses left after the plan. */
  readonly room: number;
  readonly conflicts: number;
}

/**
 * One address for each camera: outside the range the router hands out, the known devices and the address the cameras
 * come with, in one run where it fits. With what is wrong before, what to reserve, what room is left or would
 * make room, and the order in which to set new cameras that share one address.
 */
export function addressPlan(site: PlanSite): Worked<AddressPlan> {
  const { router, mask, dhcp, known, cameras, defaultAddress } = site;
  const standing = hostStanding(router, mask);
  if (standing.value !== 'host') {
    return { value: { cameras: [], without: cameras, room: 0, conflicts: 1 }, lines: standing.lines };
  }
  const used = [router, ...known, ...(defaultAddress ? [defaultAddress] : [])].map(single);
  const gaps = gapsIn(router, mask, dhcp ? [...used, dhcp] : used);
  const free = gaps.reduce((sum, gap) => sum + sizeOf(gap), 0);
  const fits = Math.min(cameras.length, free);
  const addresses = quietRun(gaps, subnetOf(router, mask), fits);
  const planned = cameras.flatMap((camera, at): readonly Planned[] => {
    const bits = addresses[at];
    return bits === undefined ? [] : [{ camera, address: { kind: 'ipv4', bits } }];
  });
  const conflicts = conflictsAt(router, mask, dhcp, known, defaultAddress);
  const value = { cameras: planned, without: cameras.slice(fits), room: free - fits };
  const rows = cameras.map((camera, at) => ({ camera, address: planned[at]?.address }));
  const inUse = [router, ...known, ...planned.map(({ address }) => address)];
  const lines: readonly Sentence[] = [
    ...subnetLines(router, mask),
    dhcpLine(dhcp),
    ...conflicts,
    ...(fits > 0 ? [...tableLines(rows, mask, router), ...useLines(router)] : []),
    { id: 'plan.room', with: { room: value.room } },
    ...roomLines(router, mask, dhcp, used, fits, value.without.length),
    ...(defaultAddress ? orderLines(defaultAddress, cameras.length, inUse, dhcp) : []),
  ];
  return { value: { ...value, conflicts: conflicts.length }, lines };
}

/** What goes with the table: DNS, what to note on the router, and RFC 5227's asking before an address is used. */
function useLines(router: Address): readonly Sentence[] {
  return [
    { id: 'plan.dns', with: { router: showAddress(router) } },
    { id: 'plan.reserve' },
    { id: 'plan.check' },
  ];
}

function dhcpLine(dhcp: Stretch | undefined): Sentence {
  if (!dhcp) return { id: 'proposal.dhcp-unknown' };
  const show = (bits: number): string => showAddress({ kind: 'ipv4', bits });
  return { id: 'proposal.dhcp', with: { from: show(dhcp.from), to: show(dhcp.to) } };
}

function single({ bits }: Address): Stretch {
  return { from: bits, to: bits };
}
