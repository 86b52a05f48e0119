import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { subnetOf } from '../../src/arithmetic/subnet.js';
import { subnetLines } from '../../src/arithmetic/subnet-lines.js';
import { address, bits, mask, prefix, words } from './given.js';

describe('the lines of a subnet sum', () => {
  test('name the block in the second number for a /12', () => {
    expect(words(subnetLines(address('172.23.40.57'), mask('/12')))[1]).toBe(
      'The mask cuts number 2 of the address into blocks of 16: 23 falls into the block from 16 to 31.',
    );
  });

  // RFC 3021, section 2.1.
  test('say that devices may have both addresses of a /31', () => {
    expect(words(subnetLines(address('10.77.5.7'), mask('/31'))).at(-1)).toBe(
      'A /31 has two addresses only, 10.77.5.6 and 10.77.5.7, and devices may have both.',
    );
  });

  test('say that a /32 leaves no neighbours', () => {
    expect(words(subnetLines(address('10.77.5.7'), mask('/32'))).at(-1)).toBe(
      'A /32 has one address only, 10.77.5.7: the device has no neighbours.',
    );
  });

  test('give a block whose ends are the ends of the subnet in that number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 0xffffffff }),
        fc.integer({ min: 0, max: 32 }),
        (value, length) => {
          const block = subnetLines(bits(value), prefix(length)).find((line) => line.id === 'subnet.block');
          expect(block === undefined).toBe(length % 8 === 0);
          if (block === undefined) return;
          const shift = 256 ** (4 - Number(block.with?.position));
          const { network, broadcast } = subnetOf(bits(value), prefix(length));
          expect(block.with?.from).toBe(Math.floor(network.bits / shift) % 256);
          expect(block.with?.to).toBe(Math.floor(broadcast.bits / shift) % 256);
        },
      ),
      { numRuns: 3_000 },
    );
  });
});
