import { describe, expect, test } from 'vitest';
import { ADDRESS } from '../../../src/arithmetic/topics/address.js';
import { FREE_ADDRESS } from '../../../src/arithmetic/topics/free-address.js';
import { OVERLAP } from '../../../src/arithmetic/topics/overlap.js';
import { TEMPORARY_ADDRESS } from '../../../src/arithmetic/topics/temporary-address.js';
import { refused, sumOf } from './given.js';

describe('what an address is for, alone', () => {
  test.each([
    ['172.23.40.57', { address: '172.23.40.57', version: 4, kind: 'private' }],
    ['FE80::1%eth0', { address: 'fe80::1', version: 6, kind: 'link-local' }],
    [
      '64:ff9b::c000:221',
      { address: '64:ff9b::192.0.2.33', version: 6, kind: 'nat64', embedded: '192.0.2.33' },
    ],
  ])('%s', (address, data) => {
    expect(sumOf(ADDRESS, { address }).data).toEqual(data);
  });

  test.each([
    ['172.23.40.57:8080', 'typed.address-with-port'],
    ['2001:db8::1::2', 'typed.address6-wrong'],
    ['', 'amount.missing'],
  ])('refuses %j', (address, id) => {
    expect(refused(ADDRESS, { address })).toEqual(['address', id]);
  });
});

describe('two ranges, alone', () => {
  test('are compared', () => {
    const { data, words } = sumOf(OVERLAP, { first: '172.23.40.1/24', second: '172.23.0.0 255.255.0.0' });
    expect(data).toEqual({
      first: '172.23.40.0/24',
      second: '172.23.0.0/16',
      overlap: 'first-inside-second',
    });
    expect(words).toContain('The range 172.23.40.0/24 lies inside the range 172.23.0.0/16.');
  });

  test('need a mask each', () => {
    expect(refused(OVERLAP, { first: '172.23.40.1', second: '172.23.0.0/16' })).toEqual([
      'first',
      'typed.mask-missing',
    ]);
  });
});

describe('a temporary address, alone', () => {
  test('comes with its cautions and the way back', () => {
    const { data, words } = sumOf(TEMPORARY_ADDRESS, {
      'camera-address': '10.77.5.21',
      'camera-mask': "don't know",
      avoid: '10.77.5.22, 10.77.5.20',
    });
    expect(data).toEqual({ address: '10.77.5.23', mask: '255.255.255.0' });
    expect(words.join(' ')).toMatch(/no internet.*Write down.*10\.77\.5\.23.*put the old settings back/);
  });

  test('says when there is none, and which of the addresses in use cannot be read', () => {
    const camera = { 'camera-address': '10.77.5.21' };
    expect(sumOf(TEMPORARY_ADDRESS, { ...camera, 'camera-mask': '/32' }).data).toEqual({ address: null });
    expect(refused(TEMPORARY_ADDRESS, { ...camera, avoid: '10.77.5.22 10.77' })).toEqual([
      'avoid',
      'typed.address-few',
    ]);
  });
});

describe('a free address, alone', () => {
  const router = { 'router-address': '172.23.40.1', 'router-mask': '/24' };

  test('comes with the settings and the checks', () => {
    const { data, words } = sumOf(FREE_ADDRESS, {
      ...router,
      'dhcp-first': '172.23.40.100',
      'dhcp-last': '172.23.40.254',
      known: '172.23.40.99; 172.23.40.98',
    });
    expect(data).toEqual({
      address: '172.23.40.97',
      mask: '255.255.255.0',
      gateway: '172.23.40.1',
      firstDns: '172.23.40.1',
    });
    expect(words.join(' ')).toMatch(/unplug the camera and ping 172\.23\.40\.97.*ARP table.*no proof/);
  });

  test('says when there is none', () => {
    const all = { ...router, 'dhcp-first': '172.23.40.1', 'dhcp-last': '172.23.40.254' };
    expect(sumOf(FREE_ADDRESS, all).data).toEqual({ address: null });
  });
});
