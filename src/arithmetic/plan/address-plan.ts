import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import { type Mask, showMask } from '../../values/mask.js';
import { temporaryAddress } from '../proposals/temporary-address.js';
import { subnetLines } from '../subnet-lines.js';
import type { Worked } from '../worked.js';
import { conflictsAt } from './conflicts.js';
import { gapsIn, runOf, type Stretch, sizeOf } from './room.js';

/** A site, and the cameras to add to it. */
export interface PlanSite {
  readonly router: Address;
  readonly mask: Mask;
  /** The range the router hands out, where it is known. */
  readonly dhcp: Stretch | undefined;
  readonly known: readonly Address[];
  readonly cameras: readonly string[];
  /** The address that the new cameras all came with, where they share one. */
  readonly sharedAddress: Address | undefined;
}

/** One camera's settings. */
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
 * One address for each camera: outside the range the router hands out and the known devices, in one run where it
 * fits. With what is wrong before, what to reserve, what room is left, and the order in which to set several new
 * cameras that share one address.
 */
export function addressPlan(site: PlanSite): Worked<AddressPlan> {
  const { router, mask, dhcp, known, cameras } = site;
  const single = ({ bits }: Address): Stretch => ({ from: bits, to: bits });
  const taken = [single(router), ...known.map(single), ...(dhcp ? [dhcp] : [])];
  const gaps = gapsIn(router, mask, taken);
  const free = gaps.reduce((sum, gap) => sum + sizeOf(gap), 0);
  const bits = runOf(gaps, Math.min(cameras.length, free));
  const planned = bits.map(
    (one, at): Planned => ({ camera: cameras[at] ?? '', address: { kind: 'ipv4', bits: one } }),
  );
  const without = cameras.slice(planned.length);
  const conflicts = conflictsAt(router, mask, dhcp, known);
  const room = free - planned.length;
  const lines: readonly Sentence[] = [
    ...subnetLines(router, mask),
    dhcpLine(dhcp),
    ...conflicts,
    ...tableLines(site, planned),
    { id: 'plan.dns' },
    { id: 'plan.reserve' },
    { id: 'plan.room', with: { room } },
    ...(without.length > 0
      ? [{ id: 'plan.too-few' as const, with: { fits: planned.length, missing: without.length } }]
      : []),
    ...orderLines(site),
  ];
  return { value: { cameras: planned, without, room, conflicts: conflicts.length }, lines };
}

function dhcpLine(dhcp: Stretch | undefined): Sentence {
  if (!dhcp) return { id: 'proposal.dhcp-unknown' };
  const show = (bits: number): string => showAddress({ kind: 'ipv4', bits });
  return { id: 'proposal.dhcp', with: { from: show(dhcp.from), to: show(dhcp.to) } };
}

/** A table to paste or to print, two lines of head and one a camera. */
function tableLines({ router, mask }: PlanSite, planned: readonly Planned[]): readonly Sentence[] {
  if (planned.length === 0) return [];
  const common = { mask: showMask(mask), gateway: showAddress(router) };
  return [
    { id: 'plan.head' },
    { id: 'plan.rule' },
    ...planned.map(
      ({ camera, address }): Sentence => ({
        id: 'plan.row',
        with: { camera: camera.replaceAll('|', '/'), address: showAddress(address), ...common },
      }),
    ),
  ];
}

/** Several new cameras at one address answer over one another: one at a time, from a computer in their range. */
function orderLines({ sharedAddress, known, router, cameras }: PlanSite): readonly Sentence[] {
  if (!sharedAddress) return [];
  const { lines, cautions, setUp, putBack } = temporaryAddress(sharedAddress, undefined, [...known, router]);
  const shared = { address: showAddress(sharedAddress), count: cameras.length };
  return [
    { id: 'plan.shared', with: shared },
    ...lines,
    ...cautions,
    ...setUp,
    { id: 'plan.one-at-a-time' },
    { id: 'plan.set-test-next' },
    ...putBack,
  ];
}
