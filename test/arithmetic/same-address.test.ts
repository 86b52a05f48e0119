import { describe, expect, test } from 'vitest';
import { sameAddress } from '../../src/arithmetic/same-address.js';
import { address, words } from './given.js';

describe('one address given twice', () => {
  test.each([
    [
      '172.23.40.57',
      '172.23.40.57',
      'same',
      'Both have the address 172.23.40.57. Only one device may have it.',
    ],
    [
      '172.23.40.57',
      '172.23.40.58',
      'different',
      '172.23.40.57 and 172.23.40.58 are two different addresses.',
    ],
    ['0.0.0.0', '0.0.0.0', 'different', 'The address is empty (0.0.0.0).'],
    ['172.23.40.57', '0.0.0.0', 'different', 'The address is empty (0.0.0.0).'],
  ])('%s and %s: %s', (a, b, value, line) => {
    const worked = sameAddress(address(a), address(b));
    expect(worked.value).toBe(value);
    expect(words(worked.lines)).toEqual([line]);
  });
});
