import type { Sentence } from '../../messages/say.js';
import { type Address, isBlank } from '../../values/address.js';
import { arpAnswers } from './arp.js';
import { follow, type Parts } from './follow.js';
import type { Leg, Stop } from './leg.js';
import { chooseRoute } from './route.js';
import { type Device, deviceOf, type Site } from './site.js';
import { walkLines } from './words.js';

/** How a walk ended: there and back, lost on the way back, or stopped on the way there and why. */
export type Outcome = 'reaches' | 'reply-lost' | Stop;

/** A question from one device to another and the answer to it: in words, and hop by hop for a drawing. */
export interface Walk {
  readonly from: string;
  readonly to: string;
  readonly destination: Address;
  readonly outcome: Outcome;
  readonly there: Leg;
  /** Absent where the question never arrived. */
  readonly back?: Leg;
  readonly lines: readonly Sentence[];
}

/** The usual parts of a walk. */
export const PARTS: Parts = { arp: arpAnswers, route: chooseRoute, reply: answerBack };

/**
 * Walks a question and its answer, as a ping does, from one device to another (RFC 1122, section 3.3.1;
 * RFC 826; RFC 3022). `from` and `to` are ids of devices; the address that is called is the first of
 * `to`. What a device learnt earlier (ARP entries, redirects) is left out. Throws when an id is unknown.
 */
export function walk(site: Site, from: string, to: string, parts: Parts = PARTS): Walk {
  const sender = deviceOf(site, from);
  const target = deviceOf(site, to);
  const destination = addressOf(target);
  const source = sourceOf(sender, destination, parts);
  const common = { from, to, destination };
  const packet = { source, destination, isReply: false };
  if (isBlank(destination)) {
    const nowhere: Leg = { hops: [], packet, seen: [], at: to, stop: 'no-address' };
    return inWords(site, { ...common, outcome: 'no-address', there: nowhere });
  }
  const there = rightDevice(follow(site, from, packet, [], parts), to);
  if (there.stop !== undefined) return inWords(site, { ...common, outcome: there.stop, there });
  const back = rightDevice(parts.reply(site, there, parts), from);
  const outcome = back.stop === undefined ? 'reaches' : 'reply-lost';
  return inWords(site, { ...common, outcome, there, back });
}

/** The way back: the device that was reached answers from the address that was called to the one that called. */
export function answerBack(site: Site, there: Leg, parts: Parts): Leg {
  const { source, destination } = there.packet;
  const packet = { source: destination, destination: source, isReply: true };
  return follow(site, there.at, packet, there.seen, parts);
}

function addressOf(device: Device): Address {
  if (device.kind === 'internet') return device.address;
  return device.interfaces[0]?.address ?? { kind: 'ipv4', bits: 0 };
}

function sourceOf(device: Device, destination: Address, parts: Parts): Address {
  if (device.kind === 'internet') return device.address;
  const choice = parts.route(device, destination);
  return choice.kind === 'send' ? choice.out.address : addressOf(device);
}

function rightDevice(leg: Leg, wanted: string): Leg {
  return leg.stop === undefined && leg.at !== wanted ? { ...leg, stop: 'wrong-device' } : leg;
}

function inWords(site: Site, walked: Omit<Walk, 'lines'>): Walk {
  return { ...walked, lines: walkLines(site, walked) };
}
