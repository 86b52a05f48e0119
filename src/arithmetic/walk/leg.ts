import type { Address } from '../../values/address.js';
import type { ArpAnswer } from './arp.js';
import type { Choice } from './route.js';

/** A packet on its way. */
export interface Packet {
  readonly source: Address;
  readonly destination: Address;
  readonly isReply: boolean;
}

/** What a router remembers of a question it passed on; `outside` is the address it put in place of the sender's. */
export interface Seen {
  readonly router: string;
  readonly source: Address;
  readonly destination: Address;
  readonly outside?: Address;
}

/** Every reason for which a packet may stop. */
export type Stop =
  | 'no-address'
  | 'no-gateway'
  | 'gateway-outside'
  | 'no-arp-answer'
  | 'two-answers'
  | 'not-passed-on'
  | 'no-route'
  | 'private-on-internet'
  | 'unasked-reply'
  | 'self-assigned'
  | 'kept-apart'
  | 'going-round'
  | 'wrong-device';

/** One address put in place of another by a router. */
export interface Swap {
  readonly what: 'source' | 'destination';
  readonly before: Address;
  readonly after: Address;
}

/** From one device to the next, over one segment. `to` is absent where nobody or more than one answered. */
export interface Hop {
  readonly from: string;
  readonly segment: string;
  readonly because: Extract<Choice, { kind: 'send' }>['because'];
  /** The sender's own range on the segment, in CIDR notation. */
  readonly range: string;
  readonly source: Address;
  readonly destination: Address;
  readonly swaps: readonly Swap[];
  readonly asked: Address;
  readonly answers: readonly ArpAnswer[];
  readonly to?: string;
}

/** One way of a walk: the hops in order, and how it ended. */
export interface Leg {
  readonly hops: readonly Hop[];
  readonly packet: Packet;
  readonly seen: readonly Seen[];
  /** The device where it ended. */
  readonly at: string;
  /** Why it stopped there; absent where the packet was for that device. */
  readonly stop?: Stop;
}
