import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { Netmask } from 'netmask';
import { describe, expect, test } from 'vitest';
import { addressKind } from '../../src/arithmetic/address-kind.js';
import { SPECIAL_PURPOSE } from '../../src/arithmetic/special-purpose.js';
import { sameSubnet, subnetOf } from '../../src/arithmetic/subnet.js';
import { showAddress } from '../../src/values/address.js';
import { showMask } from '../../src/values/mask.js';
import { bits, prefix } from './given.js';

const anyBits = fc.integer({ min: 0, max: 0xffffffff });
const anyPrefix = fc.integer({ min: 0, max: 32 });
/** Near the edge of a special block, where a wrong bound shows. */
const nearEdge = fc
  .tuple(
    fc.constantFrom(...SPECIAL_PURPOSE.map((row) => row.block), '224.0.0.0/4'),
    fc.boolean(),
    fc.integer({ min: -3, max: 3 }),
  )
  .map(([block, isTop, offset]) => {
    const edge = isTop
      ? ipaddr.IPv4.broadcastAddressFromCIDR(block)
      : ipaddr.IPv4.networkAddressFromCIDR(block);
    return Math.min(0xffffffff, Math.max(0, toBits(edge) + offset));
  });

function toBits(address: ipaddr.IPv4): number {
  return address.octets.reduce((sum, octet) => sum * 256 + octet, 0);
}

/** ipaddr.js 2.5.0's names of ranges, in our words. */
const KINDS: Readonly<Record<string, string>> = {
  unicast: 'public',
  unspecified: 'this-network',
  broadcast: 'reserved',
  multicast: 'multicast',
  linkLocal: 'self-assigned',
  loopback: 'loopback',
  carrierGradeNat: 'shared',
  private: 'private',
  as112: 'public',
  amt: 'public',
};

describe('the subnet sums', () => {
  test('agree with netmask on network, broadcast, hosts and mask', () => {
    fc.assert(
      fc.property(anyBits, anyPrefix, (value, length) => {
        const ours = subnetOf(bits(value), prefix(length));
        const theirs = new Netmask(`${showAddress(bits(value))}/${length}`);
        expect(showAddress(ours.network)).toBe(theirs.base);
        // netmask names no broadcast for a /31 and a /32 (RFC 3021, section 2.2).
        if (length <= 30) expect(showAddress(ours.broadcast)).toBe(theirs.broadcast);
        expect(showAddress(ours.first)).toBe(theirs.first);
        expect(showAddress(ours.last)).toBe(theirs.last);
        expect(showMask(prefix(length))).toBe(theirs.mask);
      }),
      { numRuns: 25_000 },
    );
  });

  test('agree with ipaddr.js on who is a neighbour', () => {
    const neighbour = fc.tuple(anyBits, anyPrefix, anyPrefix, anyBits).map(([own, length, shared, noise]) => {
      // Keep the first `shared` bits, so that insiders and outsiders are both common.
      const kept = 2 ** (32 - shared);
      return { own, length, other: own - (own % kept) + (noise % kept) };
    });
    fc.assert(
      fc.property(neighbour, ({ own, length, other }) => {
        const block: [ipaddr.IPv4, number] = [ipaddr.IPv4.parse(showAddress(bits(own))), length];
        const theirs = ipaddr.IPv4.parse(showAddress(bits(other))).match(block);
        expect(sameSubnet(bits(own), prefix(length), bits(other))).toBe(theirs);
      }),
      { numRuns: 40_000 },
    );
  });

  test('agree with ipaddr.js on what an address is for', () => {
    fc.assert(
      fc.property(fc.oneof(anyBits, nearEdge), (value) => {
        const text = showAddress(bits(value));
        const range = ipaddr.IPv4.parse(text).range();
        const ours = addressKind(bits(value)).value;
        // ipaddr.js puts documentation, benchmarking and protocol blocks together as "reserved".
        const theirs = range === 'reserved' ? (ours === 'documentation' ? ours : 'reserved') : KINDS[range];
        expect(`${text} ${ours}`).toBe(`${text} ${theirs}`);
      }),
      { numRuns: 20_000 },
    );
  });
});
