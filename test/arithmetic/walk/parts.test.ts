import { describe, expect, test } from 'vitest';
import type { Parts } from '../../../src/arithmetic/walk/follow.js';
import { owns } from '../../../src/arithmetic/walk/site.js';
import { PARTS, walk } from '../../../src/arithmetic/walk/walk.js';
import { CAMERA, host, siteWith } from './a-site.js';

const NARROW = siteWith([host('camera', 'lan 172.23.40.21/25', '172.23.40.1')]);
const ISOLATED = siteWith([], ['lan']);
const OUTSIDE = siteWith([host('camera', 'lan 172.23.40.21/24', '172.23.99.1')]);

/** Every part is needed: without it, one of the faults would pass for health. */
describe('a walk without one of its parts', () => {
  test('ARP: with an answer from wherever the address is, isolation and guest Wi-Fi would pass', () => {
    const arp: Parts['arp'] = (site, _segment, asker, target) =>
      site.devices
        .filter((device) => device.id !== asker && owns(device, target))
        .slice(0, 1)
        .map(({ id }) => ({ device: id, byProxy: false }));
    expect(walk(ISOLATED, 'laptop', 'camera').outcome).toBe('no-arp-answer');
    expect(walk(ISOLATED, 'laptop', 'camera', { ...PARTS, arp }).outcome).toBe('reaches');
    const duplicate = siteWith([host('printer', 'lan 172.23.40.21/24', '172.23.40.1')]);
    expect(walk(duplicate, 'laptop', 'camera').outcome).toBe('two-answers');
    expect(walk(duplicate, 'laptop', 'camera', { ...PARTS, arp }).outcome).not.toBe('two-answers');
  });

  test('route: with every address for a neighbour, a gateway outside the subnet would not show', () => {
    const route: Parts['route'] = (device, destination) => {
      const [out] = device.interfaces;
      return out === undefined
        ? { kind: 'none', why: 'no-address' }
        : { kind: 'send', out, ask: destination, because: 'neighbour' };
    };
    expect(walk(OUTSIDE, 'camera', 'internet').outcome).toBe('gateway-outside');
    expect(walk(OUTSIDE, 'camera', 'internet', { ...PARTS, route }).outcome).toBe('no-arp-answer');
    // Nor would a healthy camera get out.
    expect(walk(siteWith(), 'camera', 'internet', { ...PARTS, route }).outcome).toBe('no-arp-answer');
    expect(walk(NARROW, 'laptop', 'camera', { ...PARTS, route }).outcome).toBe('reaches');
  });

  test('reply: with an answer that always arrives, a mask too narrow would pass', () => {
    const reply: Parts['reply'] = (_site, there) => ({
      hops: [],
      packet: there.packet,
      seen: there.seen,
      at: 'laptop',
    });
    expect(walk(NARROW, 'laptop', 'camera').outcome).toBe('reply-lost');
    expect(walk(NARROW, 'laptop', 'camera', { ...PARTS, reply }).outcome).toBe('reaches');
  });

  test('and with all of them the healthy site is healthy', () => {
    expect(walk(siteWith(), 'laptop', CAMERA.id, PARTS).outcome).toBe('reaches');
  });
});
