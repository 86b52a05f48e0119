import { describe, expect, test } from 'vitest';
import { arpAnswers } from '../../../src/arithmetic/walk/arp.js';
import { bothWays } from '../../../src/arithmetic/walk/both-ways.js';
import type { Router, Site } from '../../../src/arithmetic/walk/site.js';
import { walk } from '../../../src/arithmetic/walk/walk.js';
import { address, mask } from '../given.js';
import { type CAMERA, host, INTERNET, LAPTOP, on, ROUTER, siteWith } from './a-site.js';

function outcome(site: Site, from: string, to: string): string {
  const { outcome: ended, back } = walk(site, from, to);
  return back?.stop === undefined ? ended : `${ended}: ${back.stop}`;
}

/** Names of those who answer ARP on the segment of camera and laptop. */
function answering(site: Site, asker: string, target: string): readonly string[] {
  return arpAnswers(site, 'lan', asker, address(target)).map(({ device }) => device);
}

function camera(where: string, gateway: string, more: Partial<typeof CAMERA> = {}) {
  return host('camera', where, gateway, more);
}

const LOOSE: Router = { ...ROUTER, dropsUnasked: false };
const JOINS: Router = { ...ROUTER, keepsApart: [] };
const GATEWAY_ITSELF = camera('lan 172.23.40.21/24', '172.23.40.21');

/**
 * What was observed on a Linux 6.18 machine with each device in a network namespace of its own, one fault
 * at a time; "camera to internet ok" is a ping there and back.
 */
describe('a site as a real kernel behaved', () => {
  test('healthy: everybody on the local network reaches everybody and the internet', () => {
    for (const [from, to] of [
      ['laptop', 'camera'],
      ['camera', 'laptop'],
      ['camera', 'internet'],
      ['laptop', 'internet'],
      ['camera', 'router'],
      ['phone', 'internet'],
    ] as const) {
      expect(outcome(siteWith(), from, to)).toBe('reaches');
    }
  });

  test('mask too narrow /25, stateful router: arping ok; laptop to camera times out; camera to laptop ping ok; internet ok', () => {
    const site = siteWith([camera('lan 172.23.40.21/25', '172.23.40.1')]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual(['camera']);
    expect(outcome(site, 'laptop', 'camera')).toBe('reply-lost: unasked-reply');
    expect(outcome(site, 'camera', 'laptop')).toBe('reaches');
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
    expect(bothWays(site, 'laptop', 'camera')).toMatchObject({ ways: 'only-second', oneWay: true });
  });

  test('mask too narrow, router not stateful: everything works, camera to laptop takes 2 hops', () => {
    const site = siteWith([camera('lan 172.23.40.21/25', '172.23.40.1'), LOOSE]);
    expect(bothWays(site, 'laptop', 'camera')).toMatchObject({ ways: 'both', oneWay: false });
    expect(walk(site, 'camera', 'laptop').there.hops).toHaveLength(2);
    expect(walk(site, 'camera', 'laptop').back?.hops).toHaveLength(1);
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
  });

  test('mask /29, gateway outside: unreachable from both sides except by arping', () => {
    const site = siteWith([camera('lan 172.23.40.21/29', '172.23.40.1')]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual(['camera']);
    expect(outcome(site, 'laptop', 'camera')).toBe('reply-lost: gateway-outside');
    expect(outcome(site, 'camera', 'laptop')).toBe('gateway-outside');
    expect(outcome(site, 'camera', 'internet')).toBe('gateway-outside');
    expect(bothWays(site, 'laptop', 'camera')).toMatchObject({ ways: 'neither', oneWay: false });
  });

  test('mask too wide /16, viewer in routed 172.23.41.0/24: both directions fail; same LAN and internet ok', () => {
    const site = siteWith([camera('lan 172.23.40.21/16', '172.23.40.1'), JOINS]);
    expect(outcome(site, 'phone', 'camera')).toBe('reply-lost: no-arp-answer');
    expect(outcome(site, 'camera', 'phone')).toBe('no-arp-answer');
    expect(outcome(site, 'laptop', 'camera')).toBe('reaches');
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
    // With its right mask the same viewer reaches it.
    expect(bothWays(siteWith([JOINS]), 'phone', 'camera').ways).toBe('both');
  });

  test('gateway outside the subnet: no default, internet unreachable; LAN and router ok', () => {
    const site = siteWith([camera('lan 172.23.40.21/24', '172.23.99.1')]);
    expect(outcome(site, 'camera', 'internet')).toBe('gateway-outside');
    expect(outcome(site, 'camera', 'router')).toBe('reaches');
    expect(bothWays(site, 'laptop', 'camera').ways).toBe('both');
  });

  test('gateway outside the subnet, accepted by firmware: ARP fails, the LAN is ok', () => {
    const site = siteWith([camera('lan 172.23.40.21/24', '172.23.99.1', { takesOutsideGateway: true })]);
    expect(outcome(site, 'camera', 'internet')).toBe('no-arp-answer');
    expect(bothWays(site, 'laptop', 'camera').ways).toBe('both');
  });

  test('gateway inside, dead: identical to that', () => {
    const site = siteWith([camera('lan 172.23.40.21/24', '172.23.40.254')]);
    expect(outcome(site, 'camera', 'internet')).toBe('no-arp-answer');
    expect(bothWays(site, 'laptop', 'camera').ways).toBe('both');
  });

  test('gateway = own address: everything is on-link, ARPs for every remote address, no answer', () => {
    const site = siteWith([GATEWAY_ITSELF]);
    const { there, outcome: ended } = walk(site, 'camera', 'internet');
    expect(ended).toBe('no-arp-answer');
    expect(there.hops.at(-1)).toMatchObject({ because: 'own-gateway', asked: INTERNET.address, answers: [] });
    expect(bothWays(site, 'laptop', 'camera').ways).toBe('both');
  });

  test('gateway = own address, router with proxy ARP: works, the fault is masked', () => {
    const site = siteWith([GATEWAY_ITSELF, { ...ROUTER, proxyArp: true }]);
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
    expect(walk(site, 'camera', 'internet').there.hops[0]?.answers).toEqual([
      { device: 'router', byProxy: true },
    ]);
  });

  test('gateway = another host: packets vanish', () => {
    const site = siteWith([camera('lan 172.23.40.21/24', '172.23.40.184')]);
    const { outcome: ended, there } = walk(site, 'camera', 'internet');
    expect([ended, there.at]).toEqual(['not-passed-on', 'laptop']);
  });

  test('camera in other subnet: no ARP for the old address; ping net unreachable from the provider; arping answers', () => {
    const site = siteWith([camera('lan 10.77.5.21/24', '10.77.5.1')]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual([]);
    expect(answering(site, 'laptop', '10.77.5.21')).toEqual(['camera']);
    const { outcome: ended, there } = walk(site, 'laptop', 'camera');
    expect([ended, there.at]).toEqual(['private-on-internet', 'internet']);
    expect(outcome(site, 'camera', 'internet')).toBe('no-arp-answer');
  });

  test('camera in other subnet: a second laptop address in its range gives 200', () => {
    const two = { ...LAPTOP, interfaces: [...LAPTOP.interfaces, on('lan 10.77.5.22/24')] };
    const site = siteWith([camera('lan 10.77.5.21/24', '10.77.5.1'), two]);
    expect(outcome(site, 'laptop', 'camera')).toBe('reaches');
    expect(outcome(site, 'laptop', 'internet')).toBe('reaches');
  });

  test('router replaced, new LAN range: arping from the new range still answers, IP does not', () => {
    const interfaces = [on('lan 172.23.88.1/24'), on('wan 198.51.100.2/28')];
    const moved = host('laptop', 'lan 172.23.88.184/24', '172.23.88.1');
    const site = siteWith([{ ...ROUTER, interfaces }, moved]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual(['camera']);
    expect(outcome(site, 'laptop', 'camera')).toBe('private-on-internet');
    expect(outcome(site, 'laptop', 'internet')).toBe('reaches');
    expect(outcome(site, 'camera', 'internet')).toBe('no-arp-answer');
  });

  test('no address: link up, all else none', () => {
    const site = siteWith([camera('lan 0.0.0.0/24', '0.0.0.0')]);
    expect(outcome(site, 'camera', 'internet')).toBe('no-address');
    expect(outcome(site, 'laptop', 'camera')).toBe('no-address');
    expect(answering(site, 'laptop', '0.0.0.0')).toEqual([]);
  });

  test('duplicate address: arping shows 2 answers', () => {
    const site = siteWith([host('printer', 'lan 172.23.40.21/24', '172.23.40.1')]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual(['printer', 'camera']);
    expect(outcome(site, 'laptop', 'camera')).toBe('two-answers');
    // When the router believes the other device, the camera is offline too.
    expect(outcome(site, 'camera', 'internet')).toBe('reply-lost: two-answers');
  });

  test('router address taken: arping shows 2 answers', () => {
    const site = siteWith([host('printer', 'lan 172.23.40.1/24', '172.23.40.1')]);
    expect(answering(site, 'camera', '172.23.40.1')).toEqual(['printer', 'router']);
    expect(outcome(site, 'camera', 'internet')).toBe('two-answers');
    expect(bothWays(site, 'laptop', 'camera').ways).toBe('both');
  });

  test('client isolation: viewer to camera no ARP answer; gateway and internet ok', () => {
    const site = siteWith([], ['lan']);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual([]);
    expect(bothWays(site, 'laptop', 'camera')).toMatchObject({ ways: 'neither' });
    expect(outcome(site, 'laptop', 'camera')).toBe('no-arp-answer');
    expect(outcome(site, 'laptop', 'router')).toBe('reaches');
    expect(outcome(site, 'laptop', 'internet')).toBe('reaches');
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
  });

  test('camera in the wrong segment: no ARP either way', () => {
    const site = siteWith([camera('guest 172.23.40.21/24', '172.23.40.1')]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual([]);
    expect(outcome(site, 'laptop', 'camera')).toBe('no-arp-answer');
    expect(outcome(site, 'camera', 'laptop')).toBe('no-arp-answer');
    expect(outcome(site, 'camera', 'internet')).toBe('no-arp-answer');
  });

  test('phone on guest Wi-Fi: the page on the LAN times out, the internet is ok for both', () => {
    expect(outcome(siteWith(), 'phone', 'camera')).toBe('kept-apart');
    expect(outcome(siteWith(), 'camera', 'phone')).toBe('kept-apart');
    expect(outcome(siteWith(), 'phone', 'internet')).toBe('reaches');
  });

  test('double NAT, 10.77.5.0/24 between: out and back ok, each router in place of the sender', () => {
    const inner = {
      ...ROUTER,
      interfaces: [on('lan 172.23.40.1/24'), on('transit 10.77.5.2/24')],
      gateway: address('10.77.5.1'),
      natOn: 'transit',
    };
    const box: Router = {
      ...ROUTER,
      id: 'box',
      name: 'box',
      interfaces: [on('transit 10.77.5.1/24'), on('wan 198.51.100.2/28')],
    };
    const site = siteWith([inner, box]);
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
    const { there, back } = walk(site, 'camera', 'internet');
    expect(there.hops.flatMap(({ swaps }) => swaps.map(({ after }) => after))).toEqual([
      address('10.77.5.2'),
      address('198.51.100.2'),
    ]);
    expect(back?.hops.at(-1)?.destination).toEqual(address('172.23.40.21'));
    expect(outcome(site, 'internet', 'camera')).toBe('private-on-internet');
  });

  test('CGNAT, WAN 100.64.7.2: out and back ok', () => {
    const home = {
      ...ROUTER,
      interfaces: [on('lan 172.23.40.1/24'), on('transit 100.64.7.2/24')],
      gateway: address('100.64.7.1'),
      natOn: 'transit',
    };
    const carrier: Router = {
      ...ROUTER,
      id: 'carrier',
      name: 'carrier',
      interfaces: [on('transit 100.64.7.1/24'), on('wan 198.51.100.2/28')],
    };
    expect(outcome(siteWith([home, carrier]), 'camera', 'internet')).toBe('reaches');
  });

  test('VPN on the laptop overlaps: its LAN traffic dies, arping still 1 answer, the camera is fine', () => {
    const tunnelled = { ...LAPTOP, interfaces: [...LAPTOP.interfaces, on('tunnel 172.23.40.5/27')] };
    const site = siteWith([tunnelled]);
    expect(answering(site, 'laptop', '172.23.40.21')).toEqual(['camera']);
    expect(outcome(site, 'laptop', 'camera')).toBe('no-arp-answer');
    expect(walk(site, 'laptop', 'camera').there.hops[0]?.segment).toBe('tunnel');
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
  });

  test('laptop with a wrong mask and a dead gateway: only the laptop suffers', () => {
    const wrong = host('laptop', 'lan 172.23.40.184/28', '172.23.40.190');
    const site = siteWith([wrong]);
    expect(outcome(site, 'laptop', 'camera')).toBe('no-arp-answer');
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
  });
});

describe('a site by the standards', () => {
  // RFC 3927, section 2.7.
  test('a self-assigned address is passed on by no router', () => {
    const own = camera('lan 169.254.17.4/16', '172.23.40.1', { takesOutsideGateway: true });
    expect(outcome(siteWith([own]), 'camera', 'internet')).toBe('self-assigned');
  });

  test('without NAT the internet has no way back to a private address', () => {
    const { natOn: _, ...plain } = ROUTER;
    expect(outcome(siteWith([plain]), 'camera', 'internet')).toBe('reply-lost: private-on-internet');
  });

  test('no gateway at all: the neighbours answer, nobody else does', () => {
    const site = siteWith([camera('lan 172.23.40.21/24', '0.0.0.0')]);
    expect(outcome(site, 'camera', 'internet')).toBe('no-gateway');
    expect(outcome(site, 'laptop', 'camera')).toBe('reaches');
  });

  test('two routers that point at each other: it goes round', () => {
    const [one, two] = [
      ['router', 'box', '172.23.40.1', '172.23.40.2'],
      ['box', 'router', '172.23.40.2', '172.23.40.1'],
    ].map(
      ([id = '', , own, gateway = '']): Router => ({
        ...{ kind: 'router', id, name: id },
        ...{ interfaces: [on(`lan ${own}/24`)], gateway: address(gateway) },
      }),
    );
    expect(outcome(siteWith(one && two ? [one, two] : []), 'camera', 'internet')).toBe('going-round');
  });

  test('a router without a way says so', () => {
    const blind = { ...ROUTER, gateway: address('0.0.0.0') };
    expect(outcome(siteWith([blind]), 'camera', 'internet')).toBe('no-route');
  });

  test('two devices set to one address: each takes calls to the other for its own', () => {
    const site = siteWith([host('laptop', 'lan 172.23.40.21/24', '172.23.40.1')]);
    expect(outcome(site, 'laptop', 'camera')).toBe('wrong-device');
  });

  // RFC 1812, section 5.2.4.3: the longest prefix.
  test('a route of its own leads round a missing gateway', () => {
    const routes = [{ address: address('203.0.113.0'), mask: mask('/24'), via: address('172.23.40.1') }];
    const site = siteWith([camera('lan 172.23.40.21/24', '0.0.0.0', { routes })]);
    expect(outcome(site, 'camera', 'internet')).toBe('reaches');
    expect(walk(site, 'camera', 'internet').there.hops[0]?.because).toBe('route');
  });

  test('an unknown device is a fault of whoever asks', () => {
    expect(() => walk(siteWith(), 'camera', 'fridge')).toThrow('"fridge"');
  });
});
