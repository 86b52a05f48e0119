import type { Address } from '../../values/address.js';
import type { Mask } from '../../values/mask.js';

/** One cable network, one Wi-Fi or one VLAN: what is said to all on it is heard by all on it. */
export interface Segment {
  readonly id: string;
  readonly name: string;
  /** Devices on it hear its routers only, not each other: client isolation, private VLAN. */
  readonly isolated?: boolean;
}

/** An address on a segment. A device with two addresses on one segment has two of these. */
export interface Interface {
  readonly segment: string;
  readonly address: Address;
  readonly mask: Mask;
}

/** A way to a network by a neighbour. */
export interface Route {
  readonly address: Address;
  readonly mask: Mask;
  readonly via: Address;
}

interface AnyDevice {
  readonly id: string;
  readonly name: string;
  readonly interfaces: readonly Interface[];
  /** The default gateway; absent or 0.0.0.0 where none is set. */
  readonly gateway?: Address;
  readonly routes?: readonly Route[];
  /** Sends to a gateway outside its own range all the same, as some firmware does. */
  readonly takesOutsideGateway?: boolean;
}

/** A device that passes nothing on: camera, computer, phone. */
export interface Host extends AnyDevice {
  readonly kind: 'host';
}

/** A device that passes packets on between its segments. */
export interface Router extends AnyDevice {
  readonly kind: 'router';
  /** The segment towards the internet, where it puts its own address in place of the sender's (RFC 3022). */
  readonly natOn?: string;
  /** Answers ARP for what it can reach elsewhere (RFC 1027). */
  readonly proxyArp?: boolean;
  /** Stateful: drops an answer when it never saw the question. */
  readonly dropsUnasked?: boolean;
  /** Pairs of segments between which it passes nothing, such as the guest Wi-Fi and the rest. */
  readonly keepsApart?: readonly (readonly [string, string])[];
}

/** Everything beyond the provider, as one device with one public address. */
export interface Internet extends AnyDevice {
  readonly kind: 'internet';
  readonly address: Address;
}

export type Device = Host | Router | Internet;

/** A site as plain data. */
export interface Site {
  readonly segments: readonly Segment[];
  readonly devices: readonly Device[];
}

/** The device with this id. Throws when the site has none: that is a fault of whoever wrote the site. */
export function deviceOf(site: Site, id: string): Device {
  const device = site.devices.find((one) => one.id === id);
  if (device === undefined) throw new Error(`the site has no device "${id}"`);
  return device;
}

/** The segment with this id. Throws when the site has none. */
export function segmentOf(site: Site, id: string): Segment {
  const segment = site.segments.find((one) => one.id === id);
  if (segment === undefined) throw new Error(`the site has no segment "${id}"`);
  return segment;
}

/** Whether an address belongs to the device. */
export function owns(device: Device, address: Address): boolean {
  if (device.kind === 'internet' && device.address.bits === address.bits) return true;
  return device.interfaces.some((one) => one.address.bits === address.bits);
}
