import { showBlock } from '../show-block.js';
import type { arpAnswers } from './arp.js';
import type { Hop, Leg, Packet, Seen, Stop, Swap } from './leg.js';
import { refusal, sendOut, takeIn } from './pass-on.js';
import type { Choice, chooseRoute } from './route.js';
import { type Device, deviceOf, type Site } from './site.js';

/** The parts of a walk that can be put in place of the usual ones. */
export interface Parts {
  readonly arp: typeof arpAnswers;
  readonly route: typeof chooseRoute;
  readonly reply: (site: Site, there: Leg, parts: Parts) => Leg;
}

/** A packet goes over no more routers than this; a real one dies after 64 or more (RFC 791, time to live). */
const MOST_HOPS = 16;

interface Place {
  readonly device: Device;
  readonly packet: Packet;
  readonly swaps: readonly Swap[];
  readonly choice: Choice;
}

/** Follows a packet from a device, hop by hop, until it is where it should be or stops. */
export function follow(site: Site, from: string, packet: Packet, seen: readonly Seen[], parts: Parts): Leg {
  const start = deviceOf(site, from);
  const choice = parts.route(start, packet.destination);
  const leg: Leg = { hops: [], packet, seen, at: from };
  if (choice.kind === 'here') return leg;
  if (choice.kind === 'none') {
    const isLost = start.kind === 'internet';
    return {
      ...leg,
      stop: isLost ? (refusal(start, choice, '', packet.destination) ?? 'no-route') : choice.why,
    };
  }
  return onwards(site, { device: start, packet, swaps: [], choice }, leg, parts);
}

/** Sends from a place, takes in at the next, and so on. */
function onwards(site: Site, place: Place, leg: Leg, parts: Parts): Leg {
  const { device, packet, swaps, choice } = place;
  if (choice.kind !== 'send') return leg;
  if (leg.hops.length >= MOST_HOPS) return stopped(leg, device, 'going-round');
  const answers = parts.arp(site, choice.out.segment, device.id, choice.ask);
  const [answer, ...others] = answers;
  const hop: Hop = {
    from: device.id,
    segment: choice.out.segment,
    because: choice.because,
    range: showBlock(choice.out),
    source: packet.source,
    destination: packet.destination,
    swaps,
    asked: choice.ask,
    answers,
    ...(answer && others.length === 0 && { to: answer.device }),
  };
  const gone: Leg = { ...leg, packet, hops: [...leg.hops, hop] };
  if (answer === undefined) return stopped(gone, device, 'no-arp-answer');
  if (others.length > 0) return stopped(gone, device, 'two-answers');
  return arrive(site, deviceOf(site, answer.device), choice.out.segment, gone, parts);
}

function arrive(site: Site, device: Device, cameIn: string, leg: Leg, parts: Parts): Leg {
  const arrival = takeIn(device, leg.packet, leg.seen);
  if (arrival.kind === 'for-it') return { ...leg, at: device.id };
  if (arrival.kind === 'stops') return stopped(leg, device, arrival.why);
  const { packet } = arrival;
  const choice = parts.route(device, packet.destination);
  const why = refusal(device, choice, cameIn, packet.destination);
  if (why !== undefined) return stopped({ ...leg, packet }, device, why);
  if (device.kind !== 'router') {
    return onwards(site, { device, packet, swaps: arrival.swaps, choice }, leg, parts);
  }
  const swap = sendOut(device, packet, cameIn, choice);
  const swaps = swap === undefined ? arrival.swaps : [...arrival.swaps, swap];
  const sent = swap === undefined ? packet : { ...packet, source: swap.after };
  const noted: Seen = {
    router: device.id,
    source: packet.source,
    destination: packet.destination,
    ...(swap && { outside: swap.after }),
  };
  const seen = packet.isReply ? leg.seen : [...leg.seen, noted];
  return onwards(site, { device, packet: sent, swaps, choice }, { ...leg, seen }, parts);
}

function stopped(leg: Leg, device: Device, stop: Stop): Leg {
  return { ...leg, at: device.id, stop };
}
