import type { Sentence } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import { type Mask, showMask } from '../../values/mask.js';
import { hostStanding } from '../host-standing.js';
import { sameSubnet, subnetOf } from '../subnet.js';
import type { Stretch } from './room.js';

/** What is wrong at a site before anything is added: a sentence each, the range first, then device by device. */
export function conflictsAt(
  router: Address,
  mask: Mask,
  dhcp: Stretch | undefined,
  known: readonly Address[],
  defaultAddress: Address | undefined,
): readonly Sentence[] {
  const inDhcp = ({ bits }: Address): boolean => dhcp !== undefined && dhcp.from <= bits && bits <= dhcp.to;
  const said = (address: Address) => ({ address: showAddress(address), mask: showMask(mask) });
  const lines: Sentence[] = dhcp ? [...rangeConflicts(router, mask, dhcp)] : [];
  if (inDhcp(router)) lines.push({ id: 'plan.router-in-dhcp', with: said(router) });
  for (const [at, address] of known.entries()) {
    if (known.findIndex(({ bits }) => bits === address.bits) < at) {
      lines.push({ id: 'plan.twice', with: said(address) });
    } else if (address.bits === router.bits) lines.push({ id: 'plan.same-as-router', with: said(address) });
    else if (!sameSubnet(router, mask, address)) lines.push({ id: 'plan.outside', with: said(address) });
    else if (hostStanding(address, mask).value !== 'host')
      lines.push({ id: 'plan.no-host', with: said(address) });
    else if (inDhcp(address)) lines.push({ id: 'plan.in-dhcp', with: said(address) });
  }
  const isTaken = [router, ...known].some(({ bits }) => bits === defaultAddress?.bits);
  if (defaultAddress && (isTaken || inDhcp(defaultAddress))) {
    lines.push({ id: 'plan.default-taken', with: said(defaultAddress) });
  }
  return lines;
}

/** A range that reaches past the hosts of the network hands out addresses that cannot work. */
function rangeConflicts(router: Address, mask: Mask, dhcp: Stretch): readonly Sentence[] {
  const { first, last } = subnetOf(router, mask);
  if (first.bits <= dhcp.from && dhcp.to <= last.bits) return [];
  return [{ id: 'plan.dhcp-outside', with: { first: showAddress(first), last: showAddress(last) } }];
}
