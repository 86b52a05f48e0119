import type { Address } from '../../values/address.js';
import { addressKind } from '../address-kind.js';
import type { Packet, Seen, Stop, Swap } from './leg.js';
import type { Choice } from './route.js';
import { type Device, owns, type Router } from './site.js';

/** What a device does with a packet that came in. */
export type Arrival =
  | { readonly kind: 'for-it' }
  | { readonly kind: 'stops'; readonly why: Stop }
  | { readonly kind: 'goes-on'; readonly packet: Packet; readonly swaps: readonly Swap[] };

/**
 * Takes a packet in: it is for this device, it stops here, or it goes on. A router that put its own
 * address in place of a sender's puts the sender's back in the answer (RFC 3022, section 2.2). Nobody
 * passes self-assigned addresses on (RFC 3927, section 2.7), nor the internet private ones (RFC 1918).
 */
export function takeIn(device: Device, packet: Packet, seen: readonly Seen[]): Arrival {
  const asked = device.kind === 'router' && packet.isReply ? questionOf(device, packet, seen) : undefined;
  const isSwapped = asked?.outside !== undefined && asked.outside.bits === packet.destination.bits;
  if (owns(device, packet.destination) && !isSwapped) return { kind: 'for-it' };
  if (device.kind === 'host') return { kind: 'stops', why: 'not-passed-on' };
  if (isSelfAssigned(packet.source) || isSelfAssigned(packet.destination)) {
    return { kind: 'stops', why: 'self-assigned' };
  }
  if (device.kind === 'router' && device.dropsUnasked === true && packet.isReply && asked === undefined) {
    return { kind: 'stops', why: 'unasked-reply' };
  }
  if (asked === undefined || !isSwapped) return { kind: 'goes-on', packet, swaps: [] };
  const swap: Swap = { what: 'destination', before: packet.destination, after: asked.source };
  return { kind: 'goes-on', packet: { ...packet, destination: asked.source }, swaps: [swap] };
}

/** Why a way that a router or the internet found may not be taken from the segment the packet came in on. */
export function refusal(device: Device, choice: Choice, cameIn: string, to: Address): Stop | undefined {
  if (choice.kind === 'none') {
    return device.kind === 'internet' && !isCarried(to) ? 'private-on-internet' : 'no-route';
  }
  if (choice.kind === 'here' || device.kind !== 'router') return undefined;
  const pair = [cameIn, choice.out.segment];
  const isApart = device.keepsApart?.some((two) => two.every((segment) => pair.includes(segment)));
  return isApart === true ? 'kept-apart' : undefined;
}

/** The packet as it leaves a router: behind the router's own address where it goes out to the internet. */
export function sendOut(router: Router, packet: Packet, cameIn: string, choice: Choice): Swap | undefined {
  if (choice.kind !== 'send' || packet.isReply) return undefined;
  if (choice.out.segment !== router.natOn || cameIn === router.natOn) return undefined;
  return { what: 'source', before: packet.source, after: choice.out.address };
}

function questionOf(router: Router, packet: Packet, seen: readonly Seen[]): Seen | undefined {
  return seen.find(
    (one) =>
      one.router === router.id &&
      one.destination.bits === packet.source.bits &&
      (one.outside ?? one.source).bits === packet.destination.bits,
  );
}

function isSelfAssigned(address: Address): boolean {
  return addressKind(address).value === 'self-assigned';
}

/** Documentation addresses stand for public ones in an example (RFC 5737). */
function isCarried(address: Address): boolean {
  const kind = addressKind(address).value;
  return kind === 'public' || kind === 'documentation';
}
