import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { retyped } from '../../../src/intake/parsers/retyped.js';
import { read } from '../../../src/intake/read.js';
import type { Adapter } from '../../../src/intake/seen.js';
import { showAddress } from '../../../src/values/address.js';
import { showAddress6 } from '../../../src/values/address6.js';
import { showMask } from '../../../src/values/mask.js';
import { bestMilliseconds } from '../../timing/times-as-long.js';

interface Sample {
  readonly name: string;
  readonly text: string;
  readonly expected: {
    readonly seen: { readonly adapters: readonly object[] };
    readonly unread: readonly number[];
  };
}

const FOLDER = new URL('../samples/retyped/', import.meta.url);

const SAMPLES: readonly Sample[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.txt'))
  .sort()
  .map((name) => ({
    name,
    text: readFileSync(new URL(name, FOLDER), 'utf8'),
    expected: JSON.parse(readFileSync(new URL(name.replace(/txt$/, 'json'), FOLDER), 'utf8')),
  }));

/** With addresses and masks as text; empty lists of IPv6 left out, as the samples do. */
function shown(adapter: Adapter): object {
  const { addresses, addresses6, gateways, gateways6, dns, dns6, ...others } = adapter;
  const sixes = Object.entries({ addresses6, gateways6, dns6 }).filter(([, list]) => list.length > 0);
  const inText = ({ value, line }: Adapter['dns'][number]): object => ({ value: showAddress(value), line });
  return {
    ...others,
    addresses: addresses.map(({ address, mask, line }) => ({
      address: showAddress(address),
      ...(mask === undefined ? {} : { mask: showMask(mask) }),
      line,
    })),
    gateways: gateways.map(inText),
    dns: dns.map(inText),
    ...Object.fromEntries(
      sixes.map(([key, list]) => [
        key,
        list.map(({ value, line }) => ({ value: showAddress6(value), line })),
      ]),
    ),
  };
}

describe('what people retype', () => {
  test('has samples', () => {
    expect(SAMPLES.length).toBeGreaterThan(25);
  });

  test.each(SAMPLES)('$name', ({ text, expected }) => {
    const { seen, unread } = read(text, [retyped]);
    expect(seen.adapters.map(shown)).toEqual(expected.seen.adapters);
    expect(unread.map((line) => line.number)).toEqual(expected.unread);
  });
});

describe('an address is none', () => {
  test.each([
    'version 1.2.3.4',
    'Firmware: 1.2.3.4',
    'fw=1.2.3.4 build 5',
    'Version de firmware 1.2.3.4',
    'прошивка 1.2.3.4',
    '固件版本：1.2.3.4',
    '1.2.3.4 is the section on lamps in the handbook',
    'reply from 172.23.40.57',
    'rtsp://172.23.40.57/live is the camera address',
    'camera 1.2.3.4.5',
    'IP 300.23.40.57',
    'IP 172.23.40',
    'gateway 255.255.255.0',
    '172.23.40.57',
    '172.23.40.57 172.23.40.1',
    '172.23.40.57  02-00-5e-10-00-06  dynamic',
  ])('in %j', (text) => {
    expect(read(text, [retyped]).seen.adapters.flatMap((adapter) => adapter.addresses)).toEqual([]);
  });
});

describe('a gateway is not guessed', () => {
  test.each([
    '172.23.40.57 255.255.255.0 172.23.40.77',
    '172.23.40.57 255.255.255.0 172.23.40.1 172.23.40.254',
    '172.23.40.57 255.255.255.0 10.77.5.1',
    'ip 172.23.40.57 mask 255.255.255.0\n172.23.40.1',
    '172.23.40.254 255.255.255.0 172.23.40.1',
    'Camera\n172.23.40.57 255.255.255.0\n172.23.40.1\n172.23.40.254',
  ])('in %j', (text) => {
    expect(read(text, [retyped]).seen.adapters.flatMap((adapter) => adapter.gateways)).toEqual([]);
  });
});

test('mutated and cut samples never throw; every address stands in its line, every line in the text', () => {
  const sample = fc.constantFrom(...SAMPLES.map(({ text }) => text));
  fc.assert(
    fc.property(sample, fc.nat(400), fc.nat(400), fc.string({ maxLength: 3 }), (text, at, cut, put) => {
      const mutated = (text.slice(0, at) + put + text.slice(at)).slice(cut % 40);
      const lines = mutated.split(/\r{0,2}\n|[\r\u2028\u2029]/);
      for (const adapter of read(mutated, [retyped]).seen.adapters) {
        for (const { address, line } of adapter.addresses) {
          expect(lines[line - 1]?.replace(/[ ,]+/g, '.').replace(/\.+/g, '.')).toContain(
            showAddress(address),
          );
        }
        for (const { value, line } of [...adapter.gateways, ...adapter.dns]) {
          expect(lines[line - 1]?.replace(/[ ,]+/g, '.').replace(/\.+/g, '.')).toContain(showAddress(value));
        }
      }
    }),
  );
});

test.each([
  '172.23.40.57\n',
  '172.23.40.57 255.255.255.0 172.23.40.77\n',
  'ip 172.23.40.57\n',
  'dns 9.9.9.9 ',
  'Camera\n\n',
  'Nothing to see on this line: 12.5 of 99\n',
  'dhcp ',
  '1.1.1.',
])('two megabytes of %j take no longer than they should', (piece) => {
  const text = piece.repeat(Math.ceil(2_000_000 / piece.length));
  expect(bestMilliseconds(() => read(text, [retyped]), 10_000)).toBeLessThan(10_000);
});
