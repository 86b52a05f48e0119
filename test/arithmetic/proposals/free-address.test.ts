import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { freeAddress } from '../../../src/arithmetic/proposals/free-address.js';
import { showAddress } from '../../../src/values/address.js';
import { address, bits, mask, prefix, words } from '../given.js';

function proposed(
  router: string,
  maskText: string,
  dhcp: readonly [string, string] | undefined,
  known: readonly string[] = [],
): string {
  const [first, last] = dhcp?.map(address) ?? [];
  const { value } = freeAddress(address(router), mask(maskText), first, last, known.map(address));
  return value ? showAddress(value.address) : 'none';
}

describe('a free address for a camera', () => {
  test.each([
    ['172.23.40.1', '/24', ['172.23.40.100', '172.23.40.199'], [], '172.23.40.253'],
    ['172.23.40.1', '/24', ['172.23.40.199', '172.23.40.100'], [], '172.23.40.253'],
    ['172.23.40.1', '/24', ['172.23.40.100', '172.23.40.254'], [], '172.23.40.99'],
    ['172.23.40.1', '/24', ['172.23.40.100', '172.23.40.254'], ['172.23.40.99'], '172.23.40.98'],
    ['172.23.40.1', '/24', ['172.23.40.2', '172.23.40.253'], [], '172.23.40.254'],
    ['172.23.40.254', '/24', ['172.23.40.2', '172.23.40.253'], [], '172.23.40.1'],
    ['172.23.40.1', '/24', ['172.23.40.2', '172.23.40.254'], [], 'none'],
    ['172.23.40.1', '/24', ['172.23.40.0', '172.23.40.255'], [], 'none'],
    ['172.23.40.1', '/24', undefined, [], '172.23.40.253'],
    ['172.23.40.1', '/30', undefined, [], '172.23.40.2'],
    ['172.23.40.1', '/30', undefined, ['172.23.40.2'], 'none'],
    ['172.23.40.1', '/16', ['172.23.0.100', '172.23.255.254'], [], '172.23.0.99'],
    // A range of another network takes nothing away.
    ['172.23.40.1', '/24', ['10.77.5.100', '10.77.5.199'], [], '172.23.40.253'],
    ['172.23.40.0', '/24', undefined, [], 'none'],
    ['172.23.40.255', '/24', undefined, [], 'none'],
    ['0.0.0.0', '/24', undefined, [], 'none'],
    ['172.23.40.1', '/32', undefined, [], 'none'],
  ] as const)('router %s %s, DHCP %j, known %j: %s', (router, maskText, dhcp, known, expected) => {
    expect(proposed(router, maskText, dhcp, known)).toBe(expected);
  });

  test('comes with mask, gateway and two DNS servers, and with what to check first', () => {
    const told = freeAddress(
      address('172.23.40.1'),
      mask('/24'),
      address('172.23.40.100'),
      address('172.23.40.199'),
      [],
    );
    expect(told.value).toEqual({
      address: address('172.23.40.253'),
      mask: mask('/24'),
      gateway: address('172.23.40.1'),
      dns: address('172.23.40.1'),
    });
    expect(words(told.lines).slice(2)).toEqual([
      'The router gives out the addresses from 172.23.40.100 to 172.23.40.199 by itself (DHCP). None of those is taken.',
      '172.23.40.253 is free, as far as these numbers say.',
      'Type into the camera: address 172.23.40.253, subnet mask 255.255.255.0, default gateway 172.23.40.1.',
      'First DNS server: 172.23.40.1, the router. Second: one that the provider names; the page of the router shows it under its internet connection.',
    ]);
    expect(words(told.checks)).toEqual([
      'Before you use it, unplug the camera and ping 172.23.40.253 from a computer on this network. Nothing should answer.',
      'Right after the ping, look 172.23.40.253 up in the ARP table of that computer. There should be no hardware address beside it.',
      'Silence is no proof: a device may be switched off. Look for 172.23.40.253 in the device list of the router too.',
    ]);
  });

  test('says so when there is none, when the DHCP range is not known, and when the router cannot be right', () => {
    const full = freeAddress(address('172.23.40.1'), mask('/30'), undefined, undefined, [
      address('172.23.40.2'),
    ]);
    expect(words(full.lines).slice(-2)).toEqual([
      'Which addresses the router gives out by itself (DHCP) is not known. Look at its page first: the proposed address must not be among them.',
      'No address is free. Make the DHCP range of the router smaller, or let the router reserve an address for the camera.',
    ]);
    expect(full.checks).toEqual([]);
    const odd = freeAddress(address('172.23.40.0'), mask('/24'), undefined, undefined, []);
    expect(words(odd.lines).at(-1)).toBe(
      '172.23.40.0 is the name of the network itself. No device may have it as its address.',
    );
  });

  test('is never network, broadcast, router, in the DHCP range or known; none only when all are taken', () => {
    const anyLength = fc.integer({ min: 8, max: 32 });
    const offset = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0x0a000000, max: 0xdfffffff }),
        anyLength,
        fc.option(fc.tuple(offset, offset), { nil: undefined }),
        fc.array(offset, { maxLength: 20 }),
        (router, length, dhcp, offsets) => {
          const cidr = `${showAddress(bits(router))}/${length}`;
          const low = toBits(ipaddr.IPv4.networkAddressFromCIDR(cidr));
          const high = toBits(ipaddr.IPv4.broadcastAddressFromCIDR(cidr));
          // From the top, where the search begins, so that it often has something to step over.
          const [one, other] = dhcp?.map((down) => Math.max(0, high - down)) ?? [];
          const known = offsets.map((down) => Math.max(0, high - down));
          const { value } = freeAddress(
            bits(router),
            prefix(length),
            one === undefined ? undefined : bits(one),
            other === undefined ? undefined : bits(other),
            known.map(bits),
          );
          const isHost = (it: number): boolean => length >= 31 || (it !== low && it !== high);
          const isFree = (it: number): boolean =>
            isHost(it) &&
            it !== router &&
            !known.includes(it) &&
            !(
              one !== undefined &&
              other !== undefined &&
              Math.min(one, other) <= it &&
              it <= Math.max(one, other)
            );
          if (value === undefined) {
            if (!isHost(router)) return;
            expect(high - low).toBeLessThan(2_000);
            for (let it = low; it <= high; it++) expect(isFree(it)).toBe(false);
            return;
          }
          expect(value.address.bits).toBeGreaterThanOrEqual(low);
          expect(value.address.bits).toBeLessThanOrEqual(high);
          expect(isFree(value.address.bits)).toBe(true);
        },
      ),
      { numRuns: 3_000 },
    );
  });
});

function toBits(it: ipaddr.IPv4): number {
  return it.octets.reduce((sum, octet) => sum * 256 + octet, 0);
}
