import type { Host, Interface, Internet, Router, Segment, Site } from '../../../src/arithmetic/walk/site.js';
import { address, mask } from '../given.js';

/** An interface from text such as `lan 172.23.40.21/24`. */
export function on(text: string): Interface {
  const [segment = '', own = '', length = ''] = text.split(/[ /]/);
  return { segment, address: address(own), mask: mask(`/${length}`) };
}

export function host(id: string, where: string, gateway: string, more: Partial<Host> = {}): Host {
  return { kind: 'host', id, name: id, interfaces: [on(where)], gateway: address(gateway), ...more };
}

/** A router with NAT and a stateful filter, as they are sold for homes (common practice, no source). */
export const ROUTER: Router = {
  kind: 'router',
  id: 'router',
  name: 'router',
  interfaces: [on('lan 172.23.40.1/24'), on('guest 172.23.41.1/24'), on('wan 198.51.100.2/28')],
  gateway: address('198.51.100.1'),
  natOn: 'wan',
  dropsUnasked: true,
  keepsApart: [['lan', 'guest']],
};

export const INTERNET: Internet = {
  kind: 'internet',
  id: 'internet',
  name: 'internet',
  interfaces: [on('wan 198.51.100.1/28')],
  address: address('203.0.113.10'),
};

const SEGMENTS: readonly Segment[] = ['lan', 'guest', 'wan', 'transit', 'tunnel'].map((id) => ({
  id,
  name: id,
}));

export const CAMERA = host('camera', 'lan 172.23.40.21/24', '172.23.40.1');
export const LAPTOP = host('laptop', 'lan 172.23.40.184/24', '172.23.40.1');
export const PHONE = host('phone', 'guest 172.23.41.50/24', '172.23.41.1');

/** A healthy site: camera and laptop on one segment, a phone on the guest Wi-Fi; what is given takes its place. */
export function siteWith(
  devices: readonly (Host | Router | Internet)[] = [],
  isolated: readonly string[] = [],
): Site {
  const usual = [CAMERA, LAPTOP, PHONE, ROUTER, INTERNET];
  const kept = usual.filter(({ id }) => !devices.some((device) => device.id === id));
  return {
    segments: SEGMENTS.map((segment) => ({ ...segment, isolated: isolated.includes(segment.id) })),
    devices: [...devices, ...kept],
  };
}
