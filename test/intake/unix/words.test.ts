import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { kindOfAdapter, kindOfName } from '../../../src/intake/unix/adapter-kind.js';
import { address4, address6, macOf, maskOf } from '../../../src/intake/unix/words.js';
import { showAddress6 } from '../../../src/values/address6.js';
import { shown } from './shown.js';

const octet = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: 0, max: 269 }).map(String) },
  { weight: 1, arbitrary: fc.constantFrom('00', '010', '', '1a', '-1', '255') },
);
const group = fc.oneof(
  fc.integer({ min: 0, max: 0xffff }).map((number) => number.toString(16)),
  fc.constantFrom('', 'g', '12345', '0000'),
);

describe('a word of an output', () => {
  test('is an IPv4 address exactly where ipaddr.js says so, and no mask', () => {
    let accepted = 0;
    fc.assert(
      fc.property(
        fc.oneof(fc.array(octet, { minLength: 4, maxLength: 4 }), fc.array(octet, { maxLength: 6 })),
        (octets) => {
          const word = octets.join('.');
          const isMask = /^255\./.test(word) && maskOf(word) !== undefined;
          const wanted = ipaddr.IPv4.isValidFourPartDecimal(word) && !isMask ? word : undefined;
          expect(shown(address4(word))).toBe(wanted);
          if (wanted !== undefined) accepted += 1;
        },
      ),
      { numRuns: 5000 },
    );
    expect(accepted).toBeGreaterThan(200);
  });

  test('is an IPv6 address exactly where ipaddr.js says so', () => {
    let accepted = 0;
    const words = fc.tuple(
      fc.array(group, { maxLength: 8 }),
      fc.array(group, { maxLength: 4 }),
      fc.boolean(),
    );
    fc.assert(
      fc.property(words, fc.constantFrom('', '%eth0', '%12'), ([before, behind, isShort], zone) => {
        const word = `${before.join(':')}${isShort ? '::' : ':'}${behind.join(':')}`;
        const found = address6(`${word}${zone}`);
        const isWanted = ipaddr.IPv6.isValid(word);
        expect(`${word} ${found !== undefined}`).toBe(`${word} ${isWanted}`);
        if (found === undefined) return;
        accepted += 1;
        expect(ipaddr.parse(showAddress6(found)).toNormalizedString()).toBe(
          ipaddr.parse(word).toNormalizedString(),
        );
      }),
      { numRuns: 5000 },
    );
    expect(accepted).toBeGreaterThan(200);
  });

  test.each([
    ['24', '255.255.255.0'],
    ['0xffffff80', '255.255.255.128'],
    ['255.255.252.0', '255.255.252.0'],
    ['0.0.0.0', '0.0.0.0'],
    ['33', undefined],
    ['255.0.255.0', undefined],
    ['172.23.40.57', undefined],
    ['', undefined],
  ])('%j is the mask %s', (word, mask) => {
    expect(shown(maskOf(word))).toBe(mask);
  });

  test.each([
    ['2:0:5E:A:b:C', '02:00:5e:0a:0b:0c'],
    ['02:00:5e:10:00:57', '02:00:5e:10:00:57'],
    ['02-00-5e-10-00-57', undefined],
    ['02:00:5e:10:00', undefined],
    ['fe80::1', undefined],
  ])('%j is the hardware address %s', (word, mac) => {
    expect(macOf(word)).toBe(mac);
  });
});

describe('the name of an adapter', () => {
  test.each([
    ['lead', ['eth0', 'enp3s0', 'eno1', 'ens33', 'enx02005e100011', 'eth0.10', 'enP4p65s0', 'end0']],
    ['wifi', ['wlan0', 'wlp2s0', 'wlx02005e100011', 'wl0']],
    ['mobile', ['wwan0', 'wwp0s20u4', 'rmnet_data0', 'pdp_ip0']],
    ['vpn', ['tun0', 'tap1', 'wg0', 'utun3', 'ppp0', 'ipsec0']],
    ['virtual', ['docker0', 'br-1a2b3c', 'veth12ab', 'virbr0', 'vmnet1', 'vboxnet0', 'bridge100', 'awdl0']],
    ['loopback', ['lo', 'lo0']],
    ['unknown', ['en0', 'en12', 'em0', 're0', 'bond0', 'usb0', 'local', 'lan', '']],
  ] as const)('says %s', (kind, names) => {
    expect(names.map((name) => `${name} ${kindOfName(name)}`)).toEqual(names.map((it) => `${it} ${kind}`));
  });

  test('yields to the flags only where it says nothing', () => {
    expect(kindOfAdapter('home', ['POINTOPOINT', 'UP'])).toBe('vpn');
    expect(kindOfAdapter('wwan0', ['POINTOPOINT', 'UP'])).toBe('mobile');
    expect(kindOfAdapter('self', ['LOOPBACK'])).toBe('loopback');
  });
});
