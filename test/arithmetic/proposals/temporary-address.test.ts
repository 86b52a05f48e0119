import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { temporaryAddress } from '../../../src/arithmetic/proposals/temporary-address.js';
import { seenAsNeighbour } from '../../../src/arithmetic/seen-as-neighbour.js';
import { subnetOf } from '../../../src/arithmetic/subnet.js';
import { type Address, showAddress } from '../../../src/values/address.js';
import { showMask } from '../../../src/values/mask.js';
import { address, bits, mask, prefix, words } from '../given.js';

function proposed(camera: string, maskText: string | undefined, avoid: readonly string[] = []): string {
  const given = maskText === undefined ? undefined : mask(maskText);
  const { value } = temporaryAddress(address(camera), given, avoid.map(address));
  return value ? `${showAddress(value.address)} ${showMask(value.mask)}` : 'none';
}

describe('a temporary address for a computer', () => {
  test.each([
    ['10.77.5.21', '/24', [], '10.77.5.22 255.255.255.0'],
    ['10.77.5.21', undefined, [], '10.77.5.22 255.255.255.0'],
    ['10.77.5.21', '/24', ['10.77.5.22'], '10.77.5.20 255.255.255.0'],
    ['10.77.5.21', '/24', ['10.77.5.22', '10.77.5.20', '10.77.5.23'], '10.77.5.19 255.255.255.0'],
    ['10.77.5.253', '/24', [], '10.77.5.252 255.255.255.0'],
    ['10.77.5.254', '/24', [], '10.77.5.253 255.255.255.0'],
    ['10.77.5.2', '/30', [], '10.77.5.1 255.255.255.252'],
    ['10.77.5.2', '/29', ['10.77.5.3', '10.77.5.4', '10.77.5.5'], '10.77.5.6 255.255.255.248'],
    ['10.77.5.2', '/31', [], '10.77.5.3 255.255.255.254'],
    ['10.77.5.2', '/32', [], 'none'],
    ['10.77.5.2', '/30', ['10.77.5.1'], 'none'],
    // RFC 3927, section 2.1: self-assigned addresses have a mask of 16 ones.
    ['169.254.17.4', undefined, [], '169.254.17.5 255.255.0.0'],
    ['0.0.0.0', '/24', [], 'none'],
  ])('for a camera at %s with %s, avoiding %j: %s', (camera, maskText, avoid, expected) => {
    expect(proposed(camera, maskText, avoid)).toBe(expected);
  });

  test('comes with how to set it, what it costs and how to put it back', () => {
    const told = temporaryAddress(address('10.77.5.21'), undefined, []);
    expect(words(told.lines)).toEqual([
      'The mask of the camera 10.77.5.21 is not known. 255.255.255.0 is taken, the usual one.',
      '10.77.5.21 with mask 255.255.255.0 (/24) belongs to the network 10.77.5.0.',
      'Devices there have addresses from 10.77.5.1 to 10.77.5.254.',
      'A computer with the address 10.77.5.22 and the mask 255.255.255.0 is in the range of the camera 10.77.5.21.',
    ]);
    expect(words(told.cautions)).toEqual([
      'While it has this address the computer has no internet, and a remote session on it ends. If somebody helps through such a session, do not begin.',
    ]);
    expect(words(told.setUp)).toContain(
      'In the settings of its cable adapter, turn automatic addressing (DHCP) off. Type the address 10.77.5.22 and the mask 255.255.255.0. Leave gateway and DNS empty.',
    );
    expect(words(told.putBack)[0]).toBe(
      'When done, put the old settings back. Mostly that is automatic addressing (DHCP). Take 10.77.5.22 out.',
    );
  });

  test('says so when there is none, and tells nobody to set anything', () => {
    const { lines, setUp, cautions, putBack } = temporaryAddress(address('10.77.5.2'), mask('/32'), []);
    expect(words(lines).at(-1)).toBe(
      'The range of the camera 10.77.5.2 with mask 255.255.255.255 has no other address to give. Read the mask again.',
    );
    expect([setUp, cautions, putBack]).toEqual([[], [], []]);
  });

  test('is always a neighbour that a device may have and nobody has; none only when all are taken', () => {
    const anyBits = fc.integer({ min: 1, max: 0xffffffff });
    fc.assert(
      fc.property(
        anyBits,
        fc.integer({ min: 0, max: 32 }),
        fc.array(fc.integer({ min: -6, max: 6 }), { maxLength: 12 }),
        (camera, length, offsets) => {
          const avoid: readonly Address[] = offsets
            .map((offset) => camera + offset)
            .filter((value) => value >= 0 && value <= 0xffffffff)
            .map(bits);
          const { first, last, hosts } = subnetOf(bits(camera), prefix(length));
          const { value } = temporaryAddress(bits(camera), prefix(length), avoid);
          const taken = new Set([camera, ...avoid.map((one) => one.bits)]);
          if (value === undefined) {
            expect(hosts).toBeLessThanOrEqual(taken.size);
            for (let one = first.bits; one <= last.bits; one++) expect(taken.has(one)).toBe(true);
            return;
          }
          expect(taken.has(value.address.bits)).toBe(false);
          expect(value.address.bits).toBeGreaterThanOrEqual(first.bits);
          expect(value.address.bits).toBeLessThanOrEqual(last.bits);
          const seen = seenAsNeighbour(bits(camera), prefix(length), value.address, value.mask);
          expect(seen.value).toBe('both');
        },
      ),
      { numRuns: 3_000 },
    );
  });
});
