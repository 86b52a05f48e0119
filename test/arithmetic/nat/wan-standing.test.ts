import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { nat64Address } from '../../../src/arithmetic/nat/nat64-address.js';
import { beyond, wanStanding } from '../../../src/arithmetic/nat/wan-standing.js';
import { showAddress } from '../../../src/values/address.js';
import { address, bits, words } from '../given.js';
import { publishedRow } from '../network-references.js';

function known(text: string | undefined) {
  return text === undefined ? undefined : address(text);
}

describe('how a router stands to the internet', () => {
  // Field test of a published carrier-NAT guide (row c-cgn-detect), and RFC 1918, 6598, 7335.
  test.each([
    ['203.0.113.7', undefined, '203.0.113.7', 'direct'],
    ['203.0.113.7', undefined, undefined, 'direct-unseen'],
    ['203.0.113.7', undefined, '198.51.100.4', 'translated'],
    ['100.64.0.0', undefined, '203.0.113.7', 'carrier'],
    ['100.127.255.255', undefined, undefined, 'carrier'],
    ['192.0.0.2', undefined, undefined, 'carrier'],
    ['10.77.5.2', undefined, '203.0.113.7', 'another-router'],
    ['172.23.40.2', '203.0.113.7', '203.0.113.7', 'double'],
    ['172.23.40.2', '203.0.113.7', undefined, 'double'],
    ['172.23.40.2', '203.0.113.7', '198.51.100.4', 'both'],
    ['172.23.40.2', '100.70.1.1', undefined, 'both'],
    ['172.23.40.2', '10.77.5.2', undefined, 'another-router'],
    ['0.0.0.0', undefined, undefined, 'no-address'],
    ['169.254.7.7', undefined, undefined, 'no-address'],
    [undefined, undefined, '203.0.113.7', 'unknown'],
  ])('outer %s, beyond it %s, seen as %s: %s', (wan, outer, seen, expected) => {
    const standing = wanStanding({ wan: known(wan), outer: known(outer), seen: known(seen) });
    expect(standing.value).toBe(expected);
  });

  // RFC 6598: 100.64.0.0 to 100.127.255.255.
  test('takes exactly the shared range for a provider', () => {
    const { first, last, count } = publishedRow<{ first: string; last: string; count: number }>(
      'c-6598-size',
    );
    const [from, to] = [address(first).bits, address(last).bits];
    expect(to - from + 1).toBe(count);
    expect(beyond(bits(from - 1))).toBe('internet');
    expect(beyond(bits(to + 1))).toBe('internet');
    fc.assert(
      fc.property(fc.integer({ min: from, max: to }), (one) => {
        expect(beyond(bits(one))).toBe('carrier');
      }),
    );
  });

  // RFC 7335, by the IANA registry.
  test('does not take 192.0.0.0/29 for public', () => {
    const row = publishedRow<{ first: string; last: string }>('a-iana4-192-0-0-0-29');
    expect(beyond(address(row.first))).toBe('carrier');
    expect(beyond(address(row.last))).toBe('carrier');
    expect(beyond(bits(address(row.last).bits + 1))).toBe('nothing');
  });

  test('writes out which address led to it', () => {
    const { lines } = wanStanding({ wan: address('100.64.3.2'), seen: address('203.0.113.7') });
    expect(words(lines).join(' ')).toMatch(/100\.64\.3\.2.*RFC 6598.*203\.0\.113\.7.*carrier-grade/);
  });
});

describe('the address in an IPv6-only network', () => {
  // RFC 6052, section 2.4, table of text representations.
  test('is that of RFC 6052', () => {
    const row = publishedRow<{ v4: string; v6: string }>('a-6052-example');
    expect(nat64Address(address(row.v4))).toBe(row.v6);
  });

  // The general-purpose library ipaddr.js as a second opinion.
  test('is the one that a library reads from the dotted form, for any public address', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffffff }), (one) => {
        const embedded = nat64Address(bits(one));
        if (embedded === undefined) return;
        const dotted = ipaddr.parse(`64:ff9b::${showAddress(bits(one))}`);
        expect(ipaddr.parse(embedded).toNormalizedString()).toBe(dotted.toNormalizedString());
      }),
    );
  });

  // RFC 6052, section 3.1.
  test.each(['10.77.5.2', '172.23.40.57', '100.64.3.2', '169.254.7.7'])('is none for %s', (text) => {
    expect(nat64Address(address(text))).toBeUndefined();
  });
});
