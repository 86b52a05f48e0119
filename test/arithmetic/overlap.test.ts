import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { type Overlap, overlap } from '../../src/arithmetic/overlap.js';
import { showAddress } from '../../src/values/address.js';
import { address, bits, mask, prefix, words } from './given.js';

function between(one: string, other: string): Overlap {
  return overlap(range(one), range(other)).value;
}

function range(block: string) {
  const [text = '', length = ''] = block.split('/');
  return { address: address(text), mask: mask(`/${length}`) };
}

describe('how two ranges lie', () => {
  test.each([
    ['172.23.40.1/24', '172.23.40.200/24', 'same'],
    ['172.23.40.1/24', '172.23.41.1/24', 'apart'],
    ['172.23.40.1/24', '172.23.41.1/23', 'first-inside-second'],
    ['172.23.40.1/16', '172.23.41.1/24', 'second-inside-first'],
    ['172.23.40.1/25', '172.23.40.129/25', 'apart'],
    ['10.77.5.1/32', '10.77.5.1/32', 'same'],
    ['10.77.5.1/0', '172.23.40.1/24', 'second-inside-first'],
  ])('%s and %s: %s', (one, other, expected) => {
    expect(between(one, other)).toBe(expected);
  });

  test('writes the sum out and says when it matters', () => {
    expect(words(overlap(range('172.23.41.1/24'), range('172.23.40.1/23')).lines)).toEqual([
      '172.23.41.1 with mask 255.255.255.0 (/24) belongs to the network 172.23.41.0.',
      'Devices there have addresses from 172.23.41.1 to 172.23.41.254.',
      '172.23.40.1 with mask 255.255.254.0 (/23) belongs to the network 172.23.40.0.',
      'The mask cuts number 3 of the address into blocks of 2: 40 falls into the block from 40 to 41.',
      'Devices there have addresses from 172.23.40.1 to 172.23.41.254.',
      'The range 172.23.41.0/24 lies inside the range 172.23.40.0/23.',
      'Where a VPN or a second router stands between them, a device takes an address of the far side for one on its own side and never calls the far side. Give one of the two another range, such as 10.77.5.0/24.',
    ]);
    expect(words(overlap(range('172.23.41.1/24'), range('172.23.40.1/24')).lines).slice(-2)).toEqual([
      'The ranges 172.23.41.0/24 and 172.23.40.0/24 have no address in common.',
      'A router or a VPN can stand between them.',
    ]);
  });

  test('agrees with ipaddr.js on whether each holds both ends of the other', () => {
    const anyBits = fc.integer({ min: 0, max: 0xffffffff });
    const anyPrefix = fc.integer({ min: 0, max: 32 });
    fc.assert(
      fc.property(anyBits, anyPrefix, anyPrefix, anyPrefix, anyBits, (own, one, other, shared, noise) => {
        const kept = 2 ** (32 - shared);
        const near = own - (own % kept) + (noise % kept);
        const holds = (outer: number, length: number, inner: number, innerLength: number): boolean => {
          const text = `${showAddress(bits(inner))}/${innerLength}`;
          return [ipaddr.IPv4.networkAddressFromCIDR(text), ipaddr.IPv4.broadcastAddressFromCIDR(text)].every(
            (end) => end.match([ipaddr.IPv4.parse(showAddress(bits(outer))), length]),
          );
        };
        const isFirstInside = holds(near, other, own, one);
        const isSecondInside = holds(own, one, near, other);
        const theirs = isFirstInside
          ? isSecondInside
            ? 'same'
            : 'first-inside-second'
          : isSecondInside
            ? 'second-inside-first'
            : 'apart';
        const ours = overlap(
          { address: bits(own), mask: prefix(one) },
          { address: bits(near), mask: prefix(other) },
        );
        expect(ours.value).toBe(theirs);
      }),
      { numRuns: 5_000 },
    );
  });
});
