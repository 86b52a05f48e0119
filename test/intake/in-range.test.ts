import fc from 'fast-check';
import { Netmask } from 'netmask';
import { expect, test } from 'vitest';
import { inRange } from '../../src/intake/in-range.js';
import { showAddress } from '../../src/values/address.js';
import { address, bits, prefix } from '../arithmetic/given.js';

const numbers = fc.integer({ min: 0, max: 0xffffffff });
const near = fc.integer({ min: -300, max: 300 });

test('agrees with netmask on who is in a range, near and far', () => {
  fc.assert(
    fc.property(numbers, fc.integer({ min: 1, max: 30 }), fc.oneof(near, numbers), (own, ones, away) => {
      const other = bits(Math.min(0xffffffff, Math.max(0, own + away)));
      const block = new Netmask(`${showAddress(bits(own))}/${ones}`);
      expect(inRange(bits(own), prefix(ones), other)).toBe(block.contains(showAddress(other)));
    }),
  );
});

test.each([0, 31, 32])('takes a mask of %i ones for none that a camera is behind', (ones) => {
  const own = address('172.23.40.57');
  expect(inRange(own, prefix(ones), own)).toBe(false);
});
