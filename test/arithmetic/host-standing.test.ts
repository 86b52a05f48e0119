import { describe, expect, test } from 'vitest';
import { hostStanding } from '../../src/arithmetic/host-standing.js';
import { address, mask, words } from './given.js';

// RFC 1122, section 3.2.1.3 (found in RFC 1812, section 4.2.2.11, from memory); RFC 3021, section 2.1.
describe('whether a device may have an address', () => {
  test.each([
    ['172.23.40.57', '/24', 'host', '172.23.40.57 may be the address of a device.'],
    ['172.23.40.255', '/23', 'host', '172.23.40.255 may be the address of a device.'],
    [
      '172.23.40.0',
      '/24',
      'network-address',
      '172.23.40.0 is the name of the network itself. No device may have it as its address.',
    ],
    [
      '172.23.40.255',
      '/24',
      'broadcast-address',
      '172.23.40.255 is the broadcast address of the network. No device may have it as its address.',
    ],
    [
      '172.23.40.63',
      '/26',
      'broadcast-address',
      '172.23.40.63 is the broadcast address of the network. No device may have it as its address.',
    ],
    ['10.77.5.6', '/31', 'host', '10.77.5.6 may be the address of a device.'],
    ['10.77.5.7', '/31', 'host', '10.77.5.7 may be the address of a device.'],
    ['10.77.5.4', '/32', 'host', '10.77.5.4 may be the address of a device.'],
    ['0.0.0.0', '/24', 'blank', 'The address is empty (0.0.0.0).'],
  ])('%s %s: %s', (own, maskText, standing, verdict) => {
    const worked = hostStanding(address(own), mask(maskText));
    expect(worked.value).toBe(standing);
    expect(words(worked.lines).at(-1)).toBe(verdict);
  });
});
