import { describe, expect, test } from 'vitest';
import { seenAsNeighbour } from '../../src/arithmetic/seen-as-neighbour.js';
import { address, mask, words } from './given.js';

// RFC 1122, section 3.3.1.1: each host decides by its own mask.
describe('whether camera and computer take each other for neighbours', () => {
  test.each([
    // camera          mask   computer         mask   who sees whom
    ['172.23.40.57', '/24', '172.23.40.20', '/24', 'both'],
    ['172.23.40.57', '/16', '172.23.40.20', '/24', 'both'],
    ['172.23.40.57', '/16', '172.23.99.20', '/24', 'only-camera'],
    ['172.23.40.57', '/24', '172.23.99.20', '/16', 'only-computer'],
    ['172.23.40.57', '/24', '172.23.99.20', '/24', 'neither'],
    ['172.23.40.57', '/24', '10.77.5.20', '/24', 'neither'],
    ['172.23.40.57', '/25', '172.23.40.200', '/24', 'only-computer'],
  ])('camera %s %s, computer %s %s: %s', (camera, cameraMask, computer, computerMask, who) => {
    const worked = seenAsNeighbour(address(camera), mask(cameraMask), address(computer), mask(computerMask));
    expect(worked.value).toBe(who);
  });

  test('writes out both decisions, the camera first', () => {
    const worked = seenAsNeighbour(
      address('172.23.40.57'),
      mask('/16'),
      address('172.23.99.20'),
      mask('/24'),
    );
    expect(words(worked.lines)).toEqual([
      '172.23.40.57 with mask 255.255.0.0 (/16) belongs to the network 172.23.0.0.',
      'Devices there have addresses from 172.23.0.1 to 172.23.255.254.',
      '172.23.99.20 is inside it.',
      '172.23.99.20 with mask 255.255.255.0 (/24) belongs to the network 172.23.99.0.',
      'Devices there have addresses from 172.23.99.1 to 172.23.99.254.',
      '172.23.40.57 is outside it.',
    ]);
  });
});
