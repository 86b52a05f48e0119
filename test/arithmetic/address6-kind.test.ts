import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { address6Kind } from '../../src/arithmetic/address6-kind.js';
import { SPECIAL_PURPOSE6 } from '../../src/arithmetic/special-purpose6.js';
import { showAddress } from '../../src/values/address.js';
import { type Address6, parseAddress6, showAddress6 } from '../../src/values/address6.js';
import { words } from './given.js';
import { published } from './references.js';

function address6(text: string): Address6 {
  const parsed = parseAddress6(text);
  if (!parsed.ok) throw new Error(`${text} is no IPv6 address`);
  return parsed.value;
}

describe('what an IPv6 address is for', () => {
  test.each([
    ['fe80::1', 'link-local'],
    ['febf:ffff::1', 'link-local'],
    ['fec0::1', 'site-local'],
    ['fc00::1', 'unique-local'],
    ['fdff::1', 'unique-local'],
    ['fe00::1', 'unallocated'],
    ['2600::1', 'global'],
    ['3fff:1000::', 'global'],
    ['4000::', 'unallocated'],
    ['1fff:ffff::', 'unallocated'],
    ['::1', 'loopback'],
    ['::', 'unspecified'],
    ['::2', 'unallocated'],
    ['ff02::fb', 'multicast'],
    ['2001:db8::57', 'documentation'],
    ['3fff::1', 'documentation'],
    ['64:ff9b::10.77.5.1', 'nat64'],
    ['64:ff9b:1::1', 'nat64-local'],
    ['::ffff:10.77.5.1', 'ipv4-mapped'],
    ['2002:c000:221::1', 'tunnel'],
    ['2001:0:1::1', 'tunnel'],
    ['2001:1::1', 'reserved'],
    ['5f00::1', 'reserved'],
  ])('%s: %s', (text, kind) => {
    expect(address6Kind(address6(text)).value).toBe(kind);
  });

  // RFC 6052, section 2.4, table.
  test('has the published IPv4 address inside a translated one', () => {
    const { v4, v6 } = published<{ v4: string; v6: string }>('a-6052-example');
    const { embedded } = address6Kind(address6(v6));
    expect(embedded && showAddress(embedded)).toBe(v4);
  });

  test('has no IPv4 address inside any other', () => {
    expect(address6Kind(address6('2001:db8::c000:221')).embedded).toBeUndefined();
    expect(address6Kind(address6('64:ff9b:1::c000:221')).embedded).toBeUndefined();
  });

  test('is told with the block and its RFC, and in plain words', () => {
    expect(words(address6Kind(address6('64:ff9b::c000:221')).lines)).toEqual([
      '64:ff9b::192.0.2.33 lies in the block 64:ff9b::/96 (RFC 6052).',
      '64:ff9b::192.0.2.33 stands for the IPv4 address 192.0.2.33. A network that has IPv6 only translates it on the way.',
    ]);
    expect(words(address6Kind(address6('4000::1')).lines)).toEqual([
      'Nobody has been given 4000::1 or its neighbours yet. Read it again.',
    ]);
  });
});

/** ipaddr.js 2.5.0's names of ranges, in our words; its unlisted rest is `unicast`. */
const KINDS: Readonly<Record<string, string>> = {
  unspecified: 'unspecified',
  linkLocal: 'link-local',
  multicast: 'multicast',
  loopback: 'loopback',
  uniqueLocal: 'unique-local',
  ipv4Mapped: 'ipv4-mapped',
  deprecatedSiteLocal: 'site-local',
  discard: 'reserved',
  '6to4': 'tunnel',
  teredo: 'tunnel',
  benchmarking: 'reserved',
  amt: 'global',
  as112v6: 'global',
  deprecatedOrchid: 'reserved',
  orchid2: 'reserved',
  droneRemoteIdProtocolEntityTags: 'reserved',
  segmentRouting: 'reserved',
};

function theirKind(address: ipaddr.IPv6): string {
  const [first = 0, second = 0, third = 0, fourth = 0] = address.parts;
  const range = address.range();
  // They put the two translation prefixes together, and documentation with the protocol assignments.
  if (range === 'rfc6052') return third === 0 ? 'nat64' : 'nat64-local';
  if (range === 'reserved') return second === 0xdb8 || first === 0x3fff ? 'documentation' : 'reserved';
  // 100:0:0:1::/64 (RFC 9780) is not in their list.
  if (first === 0x100 && second === 0 && third === 0 && fourth === 1) return 'reserved';
  // ::ffff:0:0:0/96 (RFC 6145) was never in the registry; the rest of 2000::/3 is what is given out.
  if (range === 'unicast' || range === 'rfc6145') return first >> 13 === 1 ? 'global' : 'unallocated';
  return KINDS[range] ?? range;
}

describe('what an IPv6 address is for, against ipaddr.js', () => {
  const anyGroup = fc.integer({ min: 0, max: 0xffff });
  const anywhere = fc.array(anyGroup, { minLength: 8, maxLength: 8 });
  const blocks = [...SPECIAL_PURPOSE6.map((row) => row.block), 'ff00::/8', 'fec0::/10', '2000::/3'];
  /** The ends of a special block and their neighbours, where a wrong bound shows. */
  const nearEdge = fc
    .tuple(fc.constantFrom(...blocks), fc.boolean(), fc.integer({ min: -3, max: 3 }))
    .map(([block, isTop, offset]) => {
      const edge = isTop
        ? ipaddr.IPv6.broadcastAddressFromCIDR(block)
        : ipaddr.IPv6.networkAddressFromCIDR(block);
      const value = edge.toByteArray().reduce((sum, byte) => sum * 256n + BigInt(byte), 0n);
      const moved = (value + BigInt(offset) + 2n ** 128n) % 2n ** 128n;
      return Array.from({ length: 8 }, (_, at) => Number((moved >> BigInt(112 - 16 * at)) % 65536n));
    });

  test('agrees near the ends of every block and anywhere else', () => {
    fc.assert(
      fc.property(fc.oneof(anywhere, nearEdge), (parts) => {
        const theirs = new ipaddr.IPv6(parts);
        const ours = address6(theirs.toNormalizedString());
        expect(`${showAddress6(ours)} ${address6Kind(ours).value}`).toBe(
          `${showAddress6(ours)} ${theirKind(theirs)}`,
        );
      }),
      { numRuns: 20_000 },
    );
  });
});
