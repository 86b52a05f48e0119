import { describe, expect, test } from 'vitest';
import { addressKind } from '../../src/arithmetic/address-kind.js';
import { address, bits, words } from './given.js';
import { published } from './references.js';

describe('what an address is for', () => {
  test.each([
    ['10.77.5.1', 'private'],
    ['172.15.255.255', 'public'],
    ['172.16.0.0', 'private'],
    ['172.31.255.255', 'private'],
    ['172.32.0.0', 'public'],
    ['169.254.17.4', 'self-assigned'],
    ['100.63.255.255', 'public'],
    ['100.64.0.1', 'shared'],
    ['100.127.255.255', 'shared'],
    ['100.128.0.0', 'public'],
    ['192.0.2.9', 'documentation'],
    ['198.51.100.9', 'documentation'],
    ['203.0.113.9', 'documentation'],
    ['127.0.0.1', 'loopback'],
    ['223.255.255.255', 'public'],
    ['239.255.255.250', 'multicast'],
    ['240.0.0.1', 'reserved'],
    ['198.18.0.1', 'reserved'],
    ['0.0.0.0', 'this-network'],
    ['0.1.2.3', 'this-network'],
  ])('%s: %s', (text, kind) => {
    expect(addressKind(address(text)).value).toBe(kind);
  });

  // RFC 1112, section 4, and RFC 5771, from memory: 224.0.0.0/4.
  test('multicast has the published ends', () => {
    const { first, last } = published<{ first: string; last: string }>('a-multicast-v4');
    expect(addressKind(address(first)).value).toBe('multicast');
    expect(addressKind(address(last)).value).toBe('multicast');
    expect(addressKind(bits(address(first).bits - 1)).value).toBe('public');
    expect(addressKind(bits(address(last).bits + 1)).value).toBe('reserved');
  });

  // RFC 3927, section 2.1.
  test('the addresses devices draw for themselves are self-assigned', () => {
    const { first, last } = published<{ first: string; last: string }>('a-3927-range');
    expect(addressKind(address(first)).value).toBe('self-assigned');
    expect(addressKind(address(last)).value).toBe('self-assigned');
  });

  test('is told with the block and its RFC, and in plain words', () => {
    expect(words(addressKind(address('100.64.9.9')).lines)).toEqual([
      '100.64.9.9 lies in the block 100.64.0.0/10 (RFC 6598).',
      '100.64.9.9 is an address that many customers of a provider share. It cannot be called from the internet.',
    ]);
  });
});
