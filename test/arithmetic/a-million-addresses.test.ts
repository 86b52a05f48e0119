import ipaddr from 'ipaddr.js';
import { Netmask } from 'netmask';
import { describe, expect, test } from 'vitest';
import { addressKind } from '../../src/arithmetic/address-kind.js';
import { address6Kind } from '../../src/arithmetic/address6-kind.js';
import { overlap } from '../../src/arithmetic/overlap.js';
import { SPECIAL_PURPOSE } from '../../src/arithmetic/special-purpose.js';
import { sameSubnet, subnetOf } from '../../src/arithmetic/subnet.js';
import { type Address, showAddress } from '../../src/values/address.js';
import { type Groups, showAddress6 } from '../../src/values/address6.js';
import { showMask } from '../../src/values/mask.js';
import { bits, prefix } from './given.js';
import { firstDifference, seeded } from './seeded.js';

/** How often each sum is done; all together a million. Plain loops: nothing is shrunk, so a run costs microseconds. */
const RUNS = {
  subnet: 50_000,
  neighbour: 60_000,
  overlap: 10_000,
  kind: 480_000,
  shown: 200_000,
  six: 200_000,
};
const PATIENCE = 120_000;

/** An address like another in so many of its first bits: neighbours and strangers are then both common. */
function near(own: number, shared: number, noise: number): number {
  const kept = 2 ** (32 - shared);
  return own - (own % kept) + (noise % kept);
}

function theirs4(value: number): ipaddr.IPv4 {
  return new ipaddr.IPv4([24, 16, 8, 0].map((shift) => (value >>> shift) & 255));
}

/** ipaddr.js 2.5.0's names of ranges, in our words; documentation counts with "reserved" on both sides. */
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
  reserved: 'reserved',
};

describe('a million addresses', () => {
  test('are a million', () => {
    expect(Object.values(RUNS).reduce((sum, runs) => sum + runs, 0)).toBe(1_000_000);
  });

  test('network, broadcast, ends and mask are those of netmask', { timeout: PATIENCE }, () => {
    const next = seeded(20_261_125);
    const found = firstDifference(RUNS.subnet, () => {
      const [value, length] = [next(), next() % 33];
      const { network, broadcast, first, last } = subnetOf(bits(value), prefix(length));
      const input = `${theirs4(value)}/${length}`;
      const block = new Netmask(input);
      // netmask names no broadcast for a /31 and a /32 (RFC 3021, section 2.2).
      const end = (address: Address): string => (length <= 30 ? showAddress(address) : '');
      const ours = [network, first, last].map(showAddress).join(' ');
      return {
        input,
        ours: `${ours} ${end(broadcast)} ${showMask(prefix(length))}`,
        theirs: `${block.base} ${block.first} ${block.last} ${block.broadcast ?? ''} ${block.mask}`,
      };
    });
    expect(found).toBeUndefined();
  });

  test('neighbours are those of ipaddr.js', { timeout: PATIENCE }, () => {
    const next = seeded(1_122);
    let insiders = 0;
    const found = firstDifference(RUNS.neighbour, () => {
      const [own, length] = [next(), next() % 33];
      const other = near(own, next() % 33, next());
      const isNeighbour = sameSubnet(bits(own), prefix(length), bits(other));
      if (isNeighbour) insiders++;
      return {
        input: `${theirs4(own)}/${length} ${theirs4(other)}`,
        ours: String(isNeighbour),
        theirs: String(theirs4(other).match([theirs4(own), length])),
      };
    });
    expect(found).toBeUndefined();
    // Were nearly all of one kind, the agreement would say little.
    expect(insiders / RUNS.neighbour).toBeGreaterThan(0.3);
    expect(insiders / RUNS.neighbour).toBeLessThan(0.7);
  });

  test('ranges overlap as in netmask', { timeout: PATIENCE }, () => {
    const next = seeded(4_632);
    const found = firstDifference(RUNS.overlap, () => {
      const [own, one, two] = [next(), next() % 33, next() % 33];
      const other = near(own, next() % 33, next());
      const [first, second] = [`${theirs4(own)}/${one}`, `${theirs4(other)}/${two}`];
      const [a, b] = [new Netmask(first), new Netmask(second)];
      const within = a.contains(b) ? 'second-inside-first' : b.contains(a) ? 'first-inside-second' : 'apart';
      const { value } = overlap(
        { address: bits(own), mask: prefix(one) },
        { address: bits(other), mask: prefix(two) },
      );
      return {
        input: `${first} ${second}`,
        ours: value,
        theirs: a.contains(b) && b.contains(a) ? 'same' : within,
      };
    });
    expect(found).toBeUndefined();
  });

  test('what an address is for is what ipaddr.js says', { timeout: PATIENCE }, () => {
    const next = seeded(6_890);
    const blocks = [...SPECIAL_PURPOSE.map(({ block }) => block), '224.0.0.0/4'].map((block) => {
      const [text = '', length] = block.split('/');
      const first = ipaddr.IPv4.parse(text).octets.reduce((sum, octet) => sum * 256 + octet, 0);
      return { first, last: first + 2 ** (32 - Number(length)) - 1 };
    });
    const found = firstDifference(RUNS.kind, () => {
      const [any, at, offset] = [next(), next(), (next() % 7) - 3];
      const block = blocks[at % blocks.length];
      const edge = ((at & 0x10000) === 0 ? block?.first : block?.last) ?? 0;
      // Every other input stands near the end of a block, where a wrong bound shows.
      const value = (any & 1) === 0 ? any : Math.min(0xffffffff, Math.max(0, edge + offset));
      const ours = addressKind(bits(value)).value;
      const range = theirs4(value).range();
      return {
        input: String(theirs4(value)),
        ours: ours === 'documentation' ? 'reserved' : ours,
        theirs: KINDS[range] ?? range,
      };
    });
    expect(found).toBeUndefined();
  });

  test('addresses are written as by ipaddr.js', { timeout: PATIENCE }, () => {
    const next = seeded(791);
    const found = firstDifference(RUNS.shown, () => {
      const value = next();
      return { input: String(value), ours: showAddress(bits(value)), theirs: theirs4(value).toString() };
    });
    expect(found).toBeUndefined();
  });

  test('IPv6 addresses are written as by ipaddr.js, and link-local ones told apart', {
    timeout: PATIENCE,
  }, () => {
    const next = seeded(5_952);
    const starts = [0xfe80, 0xfebf, 0xfec0, 0xfe7f, 0x2001, 0xfd00];
    const group = (): number => (next() % 3 === 0 ? next() % 65536 : 0);
    const found = firstDifference(RUNS.six, () => {
      const start = starts[next() % starts.length] ?? 0;
      const groups: Groups = [start, group(), group(), group(), group(), group(), group(), group()];
      const address = { kind: 'ipv6', groups } as const;
      const library = new ipaddr.IPv6([...groups]);
      const theirs = library.toRFC5952String();
      return {
        input: groups.join(' '),
        ours: `${showAddress6(address)} ${address6Kind(address).value === 'link-local'}`,
        theirs: `${theirs} ${library.range() === 'linkLocal'}`,
      };
    });
    expect(found).toBeUndefined();
  });
});
