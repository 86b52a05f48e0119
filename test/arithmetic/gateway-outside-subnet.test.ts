import { describe, expect, test } from 'vitest';
import { gatewayStanding } from '../../src/arithmetic/gateway-outside-subnet.js';
import { address, mask, words } from './given.js';

// RFC 1122, section 3.3.1.1: the gateway is on a connected network; section 3.2.1.3: no host has the
// network's or the broadcast address; RFC 3021, section 2.1: on a /31 both addresses are hosts'.
describe('where the default gateway stands', () => {
  test.each([
    // camera          mask                gateway          standing
    ['172.23.40.57', '255.255.255.0', '172.23.40.1', 'inside'],
    ['172.23.40.57', '255.255.255.0', '172.23.40.254', 'inside'],
    ['172.23.40.57', '255.255.255.0', '172.23.99.1', 'outside'],
    ['172.23.40.57', '255.255.255.0', '172.23.39.255', 'outside'],
    ['172.23.40.57', '255.255.255.0', '172.23.41.0', 'outside'],
    ['172.23.40.57', '255.255.0.0', '172.23.99.1', 'inside'],
    ['172.23.40.57', '255.255.255.192', '172.23.40.1', 'inside'],
    ['172.23.40.157', '255.255.255.192', '172.23.40.1', 'outside'],
    ['172.23.40.57', '255.255.255.0', '172.23.40.57', 'own-address'],
    ['172.23.40.57', '255.255.255.255', '172.23.40.57', 'own-address'],
    ['172.23.40.57', '255.255.255.255', '172.23.40.1', 'outside'],
    ['172.23.40.57', '255.255.255.0', '172.23.40.0', 'network-address'],
    ['172.23.40.57', '255.255.255.0', '172.23.40.255', 'broadcast-address'],
    ['172.23.40.57', '255.255.255.192', '172.23.40.63', 'broadcast-address'],
    ['172.23.40.57', '255.255.254.0', '172.23.40.255', 'inside'],
    ['172.23.40.57', '255.255.255.254', '172.23.40.56', 'inside'],
    ['172.23.40.57', '255.255.255.0', '0.0.0.0', 'blank'],
    ['172.23.40.57', '0.0.0.0', '0.0.0.0', 'blank'],
  ])('%s with %s and gateway %s: %s', (own, maskText, gateway, standing) => {
    expect(gatewayStanding(address(own), mask(maskText), address(gateway)).value).toBe(standing);
  });

  test('writes the sum out', () => {
    const worked = gatewayStanding(address('172.23.40.57'), mask('/24'), address('172.23.99.1'));
    expect(words(worked.lines)).toEqual([
      '172.23.40.57 with mask 255.255.255.0 (/24) belongs to the network 172.23.40.0.',
      'Devices there have addresses from 172.23.40.1 to 172.23.40.254.',
      '172.23.99.1 is outside it.',
    ]);
  });

  test('shows the block where the mask cuts through a number', () => {
    const worked = gatewayStanding(address('172.23.40.157'), mask('/26'), address('172.23.40.1'));
    expect(words(worked.lines)).toEqual([
      '172.23.40.157 with mask 255.255.255.192 (/26) belongs to the network 172.23.40.128.',
      'The mask cuts number 4 of the address into blocks of 64: 157 falls into the block from 128 to 191.',
      'Devices there have addresses from 172.23.40.129 to 172.23.40.190.',
      '172.23.40.1 is outside it.',
    ]);
  });

  test.each([
    ['0.0.0.0', 'The default gateway is empty (0.0.0.0). Nothing can leave the local network.'],
    [
      '172.23.40.57',
      "The default gateway 172.23.40.57 is the device's own address. It should be the router's.",
    ],
    ['172.23.40.0', '172.23.40.0 is the name of the network itself. No router can have it.'],
    ['172.23.40.255', '172.23.40.255 is the broadcast address of the network. No router can have it.'],
    ['172.23.40.1', '172.23.40.1 is inside it.'],
  ])('ends the sum for %s with its verdict', (gateway, verdict) => {
    const worked = gatewayStanding(address('172.23.40.57'), mask('/24'), address(gateway));
    expect(words(worked.lines).at(-1)).toBe(verdict);
  });
});
