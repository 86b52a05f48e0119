import { describe, expect, test } from 'vitest';
import { boundsOfBlock } from '../../src/arithmetic/block-bounds.js';
import { SPECIAL_PURPOSE, specialPurposeRow } from '../../src/arithmetic/special-purpose.js';
import { type Address, showAddress } from '../../src/values/address.js';
import { bits } from './given.js';
import { type Reference, referencesFor } from './references.js';

interface RegistryRow {
  readonly block: string;
  readonly first: string;
  readonly last: string;
  readonly globally_reachable: boolean | null;
}

const rows = referencesFor('a-iana4-');

function registryRow(row: Reference): RegistryRow {
  return row.value as RegistryRow;
}

function dotted(text: string): Address {
  return bits(text.split('.').reduce((sum, octet) => sum * 256 + Number(octet), 0));
}

function width(row: RegistryRow): number {
  return dotted(row.last).bits - dotted(row.first).bits;
}

/** The narrowest published row that holds an address, found without our code. */
function narrowest(address: Address): string | undefined {
  const holding = rows
    .map(registryRow)
    .filter((row) => dotted(row.first).bits <= address.bits && address.bits <= dotted(row.last).bits)
    .sort((one, other) => width(one) - width(other));
  return holding[0]?.block;
}

// IANA IPv4 Special-Purpose Address Registry, every row.
describe('the special-purpose registry', () => {
  test('has exactly the 25 published rows', () => {
    expect(rows).toHaveLength(25);
    const blocks = SPECIAL_PURPOSE.map((row) => row.block);
    expect([...blocks].sort()).toEqual(rows.map((row) => registryRow(row).block).sort());
  });

  test.each(rows.map((row): [string, Reference] => [row.statement, row]))('%s', (_, row) => {
    const { block, first, last, globally_reachable: isGlobal } = registryRow(row);
    const ours = SPECIAL_PURPOSE.find((one) => one.block === block);
    expect(row.source_locator).toContain(ours?.rfc);
    expect(ours?.isGlobal ?? null).toBe(isGlobal);
    const bounds = boundsOfBlock(block);
    expect([showAddress(bits(bounds.first)), showAddress(bits(bounds.last))]).toEqual([first, last]);
    for (const edge of [bounds.first, bounds.last]) {
      expect(specialPurposeRow(bits(edge))?.block).toBe(narrowest(bits(edge)));
    }
    for (const beyond of [bounds.first - 1, bounds.last + 1].filter((it) => it >= 0 && it <= 0xffffffff)) {
      expect(specialPurposeRow(bits(beyond))?.block).toBe(narrowest(bits(beyond)));
    }
  });

  test('gives the most specific row where one block lies inside another', () => {
    expect(specialPurposeRow(dotted('192.0.0.9'))?.block).toBe('192.0.0.9/32');
    expect(specialPurposeRow(dotted('192.0.0.7'))?.block).toBe('192.0.0.0/29');
    expect(specialPurposeRow(dotted('192.0.0.11'))?.block).toBe('192.0.0.0/24');
  });

  test('has no row for an ordinary public address', () => {
    expect(specialPurposeRow(dotted('9.255.255.255'))).toBeUndefined();
  });

  // RFC 1918: people who say "private" mean these three.
  test('calls private the three blocks of RFC 1918 and nothing else', () => {
    const blocks = SPECIAL_PURPOSE.filter((row) => row.kind === 'private');
    expect(blocks.map((row) => [row.block, row.rfc])).toEqual([
      ['10.0.0.0/8', 'RFC 1918'],
      ['172.16.0.0/12', 'RFC 1918'],
      ['192.168.0.0/16', 'RFC 1918'],
    ]);
  });
});
