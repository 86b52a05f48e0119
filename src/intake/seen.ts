import type { Address } from '../values/address.js';
import type { Address6 } from '../values/address6.js';
import type { Mask } from '../values/mask.js';

/** A value with the line of the text that it was read from, counted from 1. */
export interface At<T> {
  readonly value: T;
  readonly line: number;
}

/** Whose numbers these are, where the text or its shape says so. */
export type Owner = 'computer' | 'phone' | 'camera' | 'router' | 'unknown';

/** What an adapter hangs on. A VPN and a virtual one are named as such, since neither leads to the camera. */
export type AdapterKind = 'lead' | 'wifi' | 'mobile' | 'vpn' | 'virtual' | 'loopback' | 'unknown';

/** An address of an adapter. Texts that print no mask leave it out. */
export interface AdapterAddress {
  readonly address: Address;
  readonly mask?: Mask;
  readonly line: number;
}

/** One adapter of a computer, or the network page of a phone, camera or router. */
export interface Adapter {
  /** As the text calls it; empty where it has no name. */
  readonly name: string;
  readonly owner: Owner;
  readonly kind: AdapterKind;
  /** Whether it is plugged in and up; left out where the text does not say. */
  readonly isUp?: At<boolean>;
  readonly addresses: readonly AdapterAddress[];
  readonly addresses6: readonly At<Address6>[];
  readonly gateways: readonly At<Address>[];
  readonly gateways6: readonly At<Address6>[];
  readonly dns: readonly At<Address>[];
  readonly dns6: readonly At<Address6>[];
  /** Lower case, with colons. */
  readonly mac?: At<string>;
  /** Whether its address was typed in by hand. */
  readonly isByHand?: At<boolean>;
  readonly dhcpServer?: At<Address>;
  /** Megabits a second. */
  readonly speed?: At<number>;
  readonly duplex?: At<'full' | 'half'>;
  /** What no word of the text names, only its place or its look. Left out where everything is named. */
  readonly unnamed?: readonly ('address' | 'gateway')[];
}

export type NeighbourState = 'reachable' | 'stale' | 'static' | 'failed' | 'unknown';

/** One line of a neighbour (ARP) table. */
export interface Neighbour {
  readonly address: Address;
  readonly mac?: string;
  readonly state: NeighbourState;
  readonly adapter?: string;
  readonly line: number;
}

/** One line of a routing table; the default route has mask 0. */
export interface Route {
  readonly to: Address;
  readonly mask: Mask;
  readonly via?: Address;
  readonly adapter?: string;
  readonly metric?: number;
  readonly line: number;
}

/** Why pings failed, as the ping itself said. `from` is who said it: the own computer, or a router. */
export interface PingTrouble {
  readonly kind:
    | 'host-unreachable'
    | 'net-unreachable'
    | 'timed-out'
    | 'ttl-expired'
    | 'no-such-name'
    | 'failed';
  readonly from?: Address;
  readonly line: number;
}

export interface Ping {
  readonly target: string;
  readonly address?: Address;
  readonly sent: number;
  /** Replies of the target itself; a "host unreachable" that Windows counts as a reply is none. */
  readonly received: number;
  /** Milliseconds. */
  readonly average?: number;
  readonly troubles: readonly PingTrouble[];
  /** The target answered twice, or with two MAC addresses. */
  readonly hasDuplicates: boolean;
  readonly line: number;
}

export interface Hop {
  readonly number: number;
  /** Left out where nothing answered. */
  readonly address?: Address;
  readonly line: number;
}

export interface Trace {
  readonly target: string;
  readonly address?: Address;
  readonly hops: readonly Hop[];
  readonly line: number;
}

export interface Lookup {
  readonly name: string;
  readonly server?: Address;
  readonly addresses: readonly Address[];
  readonly outcome: 'answered' | 'no-such-name' | 'no-answer' | 'refused' | 'failed';
  readonly line: number;
}

/** A try at one TCP port. */
export interface PortTry {
  readonly target: string;
  readonly address?: Address;
  readonly port: number;
  readonly isOpen: boolean;
  readonly line: number;
}

/** The answers to an ARP request by hand (`arping`): one MAC address each. */
export interface ArpAnswers {
  readonly address: Address;
  readonly macs: readonly string[];
  readonly line: number;
}

/** All that a text told. Nothing in it names a question. */
export interface Seen {
  readonly adapters: readonly Adapter[];
  /** DNS servers that the text gives for the whole computer. */
  readonly dns: readonly At<Address>[];
  readonly neighbours: readonly Neighbour[];
  readonly routes: readonly Route[];
  readonly pings: readonly Ping[];
  readonly traces: readonly Trace[];
  readonly lookups: readonly Lookup[];
  readonly ports: readonly PortTry[];
  readonly arps: readonly ArpAnswers[];
}

export const NOTHING_SEEN: Seen = {
  adapters: [],
  dns: [],
  neighbours: [],
  routes: [],
  pings: [],
  traces: [],
  lookups: [],
  ports: [],
  arps: [],
};
