import { describe, expect, test } from 'vitest';
import { chooseRoute } from '../../../src/arithmetic/walk/route.js';
import type { Host } from '../../../src/arithmetic/walk/site.js';
import { showAddress } from '../../../src/values/address.js';
import { address, mask } from '../given.js';
import { host, on } from './a-site.js';

/** The choice on one line: why, out of which segment, who is asked. */
function choice(device: Host, destination: string): string {
  const chosen = chooseRoute(device, address(destination));
  if (chosen.kind === 'here') return 'here';
  if (chosen.kind === 'none') return chosen.why;
  return `${chosen.because} ${chosen.out.segment} ${showAddress(chosen.ask)}`;
}

// RFC 1122, section 3.3.1.1; RFC 1812, section 5.2.4.3.
describe('the way a device takes', () => {
  const usual = host('camera', 'lan 172.23.40.21/24', '172.23.40.1');

  test.each([
    ['172.23.40.21', 'here'],
    ['172.23.40.184', 'neighbour lan 172.23.40.184'],
    ['172.23.41.184', 'gateway lan 172.23.40.1'],
    ['203.0.113.10', 'gateway lan 172.23.40.1'],
  ])('to %s: %s', (destination, expected) => {
    expect(choice(usual, destination)).toBe(expected);
  });

  test.each([
    ['0.0.0.0', 'no-gateway'],
    ['172.23.99.1', 'gateway-outside'],
    ['172.23.40.21', 'own-gateway lan 203.0.113.10'],
  ])('out of its range with gateway %s: %s', (gateway, expected) => {
    expect(choice(host('camera', 'lan 172.23.40.21/24', gateway), '203.0.113.10')).toBe(expected);
  });

  test('by a gateway outside its range, where the firmware takes one', () => {
    const device = host('camera', 'lan 172.23.40.21/24', '172.23.99.1', { takesOutsideGateway: true });
    expect(choice(device, '203.0.113.10')).toBe('gateway lan 172.23.99.1');
    expect(choice(device, '172.23.40.184')).toBe('neighbour lan 172.23.40.184');
  });

  // The next four as Linux 6.18 was seen to do it, with namespaces.
  test('by a gateway that is in two of its ranges: out of the one with the longer prefix', () => {
    const interfaces = [on('wide 172.23.40.21/16'), on('narrow 172.23.41.21/24')];
    const device = { ...host('camera', 'wide 172.23.40.21/16', '172.23.41.1'), interfaces };
    expect(choice(device, '10.77.5.9')).toBe('gateway narrow 172.23.41.1');
    expect(choice({ ...device, interfaces: [...interfaces].reverse() }, '10.77.5.9')).toBe(
      'gateway narrow 172.23.41.1',
    );
  });

  test('by a gateway that two ranges of one segment hold: from the first of them', () => {
    const interfaces = [on('lan 172.23.40.21/16'), on('lan 172.23.41.21/24')];
    const device = { ...host('camera', 'lan 172.23.40.21/16', '172.23.41.1'), interfaces };
    expect(chooseRoute(device, address('10.77.5.9'))).toMatchObject({ kind: 'send', out: interfaces[0] });
  });

  test('by a route whose next hop is its own address: what the route leads to is its neighbour', () => {
    const routes = [{ address: address('10.77.5.0'), mask: mask('/24'), via: address('172.23.40.21') }];
    expect(choice(host('camera', 'lan 172.23.40.21/24', '0.0.0.0', { routes }), '10.77.5.9')).toBe(
      'route lan 10.77.5.9',
    );
  });

  test('by a gateway that is its own second address: sent from the first of that range', () => {
    const interfaces = [on('lan 172.23.40.21/24'), on('lan 172.23.40.22/24')];
    const device = { ...host('camera', 'lan 172.23.40.21/24', '172.23.40.22'), interfaces };
    const chosen = chooseRoute(device, address('10.77.5.9'));
    expect(chosen).toMatchObject({ kind: 'send', because: 'own-gateway', out: interfaces[0] });
  });

  test('is the longest prefix, whatever the order', () => {
    const interfaces = [on('lan 172.23.40.184/24'), on('tunnel 172.23.40.5/27'), on('wan 10.77.5.1/8')];
    const device = { ...usual, interfaces };
    expect(choice(device, '172.23.40.21')).toBe('neighbour tunnel 172.23.40.21');
    expect(choice(device, '172.23.40.40')).toBe('neighbour lan 172.23.40.40');
    expect(choice({ ...device, interfaces: [...interfaces].reverse() }, '172.23.40.21')).toBe(
      'neighbour tunnel 172.23.40.21',
    );
  });

  test('is a route that is longer than its own range, if the next hop is a neighbour', () => {
    const route = (via: string) => ({
      address: address('172.23.40.0'),
      mask: mask('/28'),
      via: address(via),
    });
    expect(choice({ ...usual, routes: [route('172.23.40.200')] }, '172.23.40.5')).toBe(
      'route lan 172.23.40.200',
    );
    expect(choice({ ...usual, routes: [route('10.77.5.1')] }, '172.23.40.5')).toBe(
      'neighbour lan 172.23.40.5',
    );
  });

  test('is none without an address', () => {
    expect(choice(host('camera', 'lan 0.0.0.0/24', '172.23.40.1'), '172.23.40.5')).toBe('no-address');
    expect(choice({ ...usual, interfaces: [] }, '172.23.40.5')).toBe('no-address');
  });
});
