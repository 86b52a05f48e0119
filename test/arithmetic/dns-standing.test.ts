import { describe, expect, test } from 'vitest';
import { dnsStanding } from '../../src/arithmetic/dns-standing.js';
import { address, mask, words } from './given.js';

const ROUTER = address('172.23.40.1');
const CAMERA = address('172.23.40.57');

describe('where the DNS server stands', () => {
  test.each([
    ['0.0.0.0', 'blank', 'The DNS server is empty (0.0.0.0). No name can be looked up.'],
    ['172.23.40.1', 'router', 'The DNS server 172.23.40.1 is the router.'],
    ['172.23.40.9', 'on-site', '172.23.40.9 is inside it.'],
    ['172.23.40.57', 'on-site', '172.23.40.57 is inside it.'],
    ['203.0.113.53', 'public', 'The DNS server 203.0.113.53 is reached through the router.'],
    ['9.10.11.12', 'public', 'The DNS server 9.10.11.12 is reached through the router.'],
    ['100.64.0.53', 'public', 'The DNS server 100.64.0.53 is reached through the router.'],
    ...[
      '172.23.99.1',
      '10.77.5.1',
      '192.168.77.1',
      '169.254.3.4',
      '127.0.0.1',
      '224.0.0.53',
      '240.0.0.1',
    ].map((dns) => [
      dns,
      'private-elsewhere',
      `The DNS server ${dns} is neither on this network nor on the internet.`,
    ]),
  ])('%s: %s', (dns, standing, verdict) => {
    const worked = dnsStanding(address(String(dns)), ROUTER, CAMERA, mask('/24'));
    expect(worked.value).toBe(standing);
    expect(words(worked.lines).at(-1)).toBe(verdict);
  });

  test('is the router even when the router is outside the subnet of the camera', () => {
    expect(dnsStanding(address('10.77.5.1'), address('10.77.5.1'), CAMERA, mask('/24')).value).toBe('router');
  });

  test('is empty, not the router, when neither was filled in', () => {
    expect(dnsStanding(address('empty'), address('empty'), CAMERA, mask('/24')).value).toBe('blank');
  });

  test('writes the sum out', () => {
    expect(words(dnsStanding(address('10.77.5.1'), ROUTER, CAMERA, mask('/24')).lines)).toEqual([
      '172.23.40.57 with mask 255.255.255.0 (/24) belongs to the network 172.23.40.0.',
      'Devices there have addresses from 172.23.40.1 to 172.23.40.254.',
      '10.77.5.1 is outside it.',
      '10.77.5.1 lies in the block 10.0.0.0/8 (RFC 1918).',
      '10.77.5.1 is a private address. It works on a local network only.',
      'The DNS server 10.77.5.1 is neither on this network nor on the internet.',
    ]);
  });
});
