import { expect, test } from 'vitest';
import { showBlock } from '../../src/arithmetic/show-block.js';
import { address, mask } from './given.js';

test.each([
  ['172.23.40.57', '/24', '172.23.40.0/24'],
  ['172.23.40.157', '/26', '172.23.40.128/26'],
  ['172.23.40.57', '/32', '172.23.40.57/32'],
  ['172.23.40.57', '/0', '0.0.0.0/0'],
])('the network of %s with %s is shown as %s', (own, maskText, block) => {
  expect(showBlock({ address: address(own), mask: mask(maskText) })).toBe(block);
});
