import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { SPECIAL_PURPOSE6, specialPurpose6Row } from '../../src/arithmetic/special-purpose6.js';
import { type Address6, parseAddress6 } from '../../src/values/address6.js';
import { published, type Reference, referencesFor } from './references.js';

interface RegistryRow {
  readonly block: string;
  readonly first: string;
  readonly last: string;
  readonly globally_reachable: boolean | 'n/a' | null;
}

/** Newer than the copy of the registry these tests use: RFC 9665, from memory; the others as ipaddr.js 2.5.0 has them. */
const ADDED = ['2001:1::3/128', '2001:3::/32', '2001:4:112::/48', '2001:30::/28', '2620:4f:8000::/48'];

function address6(text: string): Address6 {
  const parsed = parseAddress6(text);
  if (!parsed.ok) throw new Error(`${text} is no IPv6 address`);
  return parsed.value;
}

function rowOf(reference: Reference): RegistryRow {
  return reference.value as RegistryRow;
}

// IANA IPv6 Special-Purpose Address Registry, a copy of its data file.
describe('the special-purpose IPv6 blocks', () => {
  const rows = referencesFor('a-iana6-');

  test('are the 20 of the registry and the five added', () => {
    expect(rows).toHaveLength(20);
    const blocks = [...rows.map((row) => rowOf(row).block), ...ADDED];
    expect(SPECIAL_PURPOSE6.map(({ block }) => block).sort()).toEqual(blocks.sort());
  });

  test.each(rows.map((row): [string, Reference] => [row.statement, row]))('%s', (_, reference) => {
    const { block, first, last, globally_reachable: isGlobal } = rowOf(reference);
    for (const end of [first, last]) {
      // A narrower block may begin where a wider one begins: 2001::/32 in 2001::/23.
      const holders = rows
        .map((row) => ipaddr.IPv6.parseCIDR(rowOf(row).block))
        .filter((cidr) => ipaddr.IPv6.parse(end).match(cidr))
        .sort((one, other) => other[1] - one[1]);
      const [theirs] = holders.map(([network, length]) => `${network.toRFC5952String()}/${length}`);
      expect(specialPurpose6Row(address6(end))?.block).toBe(theirs);
      expect(end === last ? theirs : block).toBe(block);
    }
    const ours = SPECIAL_PURPOSE6.find((row) => row.block === block);
    expect(ours?.isGlobal).toBe(typeof isGlobal === 'boolean' ? isGlobal : undefined);
    // The registry's own reference stands first in the statement's brackets.
    expect(reference.statement).toContain(`(${ours?.rfc}`);
  });

  // RFC 4291, section 2.7, and RFC 3879, both from memory.
  test('multicast and site-local addresses are known beside the registry', () => {
    expect(specialPurpose6Row(address6('ff02::fb'))?.block).toBe(
      published<{ block: string }>('a-multicast-v6').block,
    );
    expect(specialPurpose6Row(address6('fec0::1'))?.block).toBe(
      published<{ block: string }>('a-site-local').block,
    );
  });
});
