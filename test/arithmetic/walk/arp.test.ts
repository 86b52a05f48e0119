import { describe, expect, test } from 'vitest';
import { arpAnswers } from '../../../src/arithmetic/walk/arp.js';
import type { Site } from '../../../src/arithmetic/walk/site.js';
import { address } from '../given.js';
import { host, ROUTER, siteWith } from './a-site.js';

function answers(site: Site, segment: string, asker: string, target: string): readonly string[] {
  return arpAnswers(site, segment, asker, address(target)).map(({ device, byProxy }) =>
    byProxy ? `${device} by proxy` : device,
  );
}

// RFC 826, from memory: whoever has the address answers, on that segment only; RFC 5227; RFC 1027.
describe('who answers ARP', () => {
  test('one, on its own segment', () => {
    expect(answers(siteWith(), 'lan', 'laptop', '172.23.40.21')).toEqual(['camera']);
    expect(answers(siteWith(), 'guest', 'phone', '172.23.40.21')).toEqual([]);
  });

  test('the router with the address that it has there, not with that of its other side', () => {
    expect(answers(siteWith(), 'lan', 'laptop', '172.23.40.1')).toEqual(['router']);
    expect(answers(siteWith(), 'lan', 'laptop', '172.23.41.1')).toEqual([]);
    expect(answers(siteWith(), 'lan', 'laptop', '198.51.100.2')).toEqual([]);
  });

  test('whatever the masks are', () => {
    const far = siteWith([host('camera', 'lan 10.77.5.21/30', '10.77.5.22')]);
    expect(answers(far, 'lan', 'laptop', '10.77.5.21')).toEqual(['camera']);
  });

  test('never the one who asks, and nobody for 0.0.0.0', () => {
    expect(answers(siteWith(), 'lan', 'camera', '172.23.40.21')).toEqual([]);
    expect(
      answers(siteWith([host('camera', 'lan 0.0.0.0/24', '0.0.0.0')]), 'lan', 'laptop', '0.0.0.0'),
    ).toEqual([]);
  });

  test('two or more where the address is in use twice', () => {
    const site = siteWith(
      ['printer', 'doorbell'].map((id) => host(id, 'lan 172.23.40.21/24', '172.23.40.1')),
    );
    expect(answers(site, 'lan', 'laptop', '172.23.40.21')).toEqual(['printer', 'doorbell', 'camera']);
  });

  test('under isolation only the router, and to the router everybody', () => {
    const site = siteWith([], ['lan']);
    expect(answers(site, 'lan', 'laptop', '172.23.40.21')).toEqual([]);
    expect(answers(site, 'lan', 'laptop', '172.23.40.1')).toEqual(['router']);
    expect(answers(site, 'lan', 'router', '172.23.40.21')).toEqual(['camera']);
  });

  test('by proxy, a router for what it reaches on another segment only', () => {
    const site = siteWith([{ ...ROUTER, proxyArp: true }]);
    expect(answers(site, 'lan', 'camera', '203.0.113.10')).toEqual(['router by proxy']);
    expect(answers(site, 'lan', 'camera', '172.23.41.50')).toEqual(['router by proxy']);
    expect(answers(site, 'lan', 'camera', '172.23.40.99')).toEqual([]);
    expect(answers(siteWith(), 'lan', 'camera', '203.0.113.10')).toEqual([]);
  });

  test('on a segment that is not there, is a fault of whoever asks', () => {
    expect(() => arpAnswers(siteWith(), 'attic', 'camera', address('172.23.40.1'))).toThrow('"attic"');
  });
});
