import { describe, expect, test } from 'vitest';
import { SUBNET } from '../../../src/arithmetic/topics/subnet.js';
import { refused, sumOf } from './given.js';

const CAMERA = { address: '172.23.40.157', mask: '255.255.255.192' };

describe('the network of an address, alone', () => {
  test('gives the sum and the numbers', () => {
    const { verdict, words, data } = sumOf(SUBNET, {
      ...CAMERA,
      gateway: '172.23.40.1',
      other: '172.23.40.190',
    });
    expect(verdict).toBe('impossible');
    expect(words).toEqual([
      '172.23.40.157 with mask 255.255.255.192 (/26) belongs to the network 172.23.40.128.',
      'The mask cuts number 4 of the address into blocks of 64: 157 falls into the block from 128 to 191.',
      'Devices there have addresses from 172.23.40.129 to 172.23.40.190.',
      '172.23.40.157 may be the address of a device.',
      '172.23.40.157 lies in the block 172.16.0.0/12 (RFC 1918).',
      '172.23.40.157 is a private address. It works on a local network only.',
      '172.23.40.1 is outside it.',
      '172.23.40.190 is inside it.',
    ]);
    expect(data).toEqual({
      address: '172.23.40.157',
      mask: '255.255.255.192',
      prefix: 26,
      network: '172.23.40.128',
      broadcast: '172.23.40.191',
      firstHost: '172.23.40.129',
      lastHost: '172.23.40.190',
      hosts: 62,
      standing: 'host',
      kind: 'private',
      gateway: 'outside',
      other: 'inside',
    });
  });

  test.each([
    [{}, 'fine'],
    [{ gateway: '172.23.40.129' }, 'fine'],
    [{ gateway: '172.23.40.191' }, 'impossible'],
    [{ gateway: '172.23.40.157' }, 'impossible'],
    [{ gateway: 'none' }, 'impossible'],
    [{ address: '172.23.40.128' }, 'impossible'],
    [{ gateway: '' }, 'fine'],
  ])('with %j is %s', (more, verdict) => {
    expect(sumOf(SUBNET, { ...CAMERA, ...more }).verdict).toBe(verdict);
  });

  test.each([
    [{ mask: '24' }, 'address', 'amount.missing'],
    [{ address: '172.23.40.57' }, 'mask', 'amount.missing'],
    [{ ...CAMERA, gateway: '172.23.40' }, 'gateway', 'typed.address-few'],
    [{ ...CAMERA, mask: '255.255.255.1' }, 'mask', 'typed.mask-number'],
  ])('refuses %j at %s', (given, input, id) => {
    expect(refused(SUBNET, given)).toEqual([input, id]);
  });
});
