import { describe, expect, test } from 'vitest';
import { noticed } from '../../src/call/noticed.js';
import { type Adapter, type Neighbour, NOTHING_SEEN, type Seen } from '../../src/intake/seen.js';
import { address } from '../arithmetic/given.js';
import { adapter, addressAt, at } from '../intake/made.js';

const found = (seen: Partial<Seen>): readonly string[] => noticed({ ...NOTHING_SEEN, ...seen });
const lead = (differs: Partial<Adapter> = {}): Adapter =>
  adapter('172.23.40.5/24', 1, { name: 'eth0', kind: 'lead', ...differs });
const wifi = (text: string, differs: Partial<Adapter> = {}): Adapter =>
  adapter(text, 2, { name: 'wlan0', kind: 'wifi', ...differs });

test('nothing stands out of a computer that is as it should be', () => {
  const own = lead({ gateways: [addressAt('172.23.40.1', 3)], dhcpServer: addressAt('172.23.40.1', 4) });
  expect(found({ adapters: [own, wifi('10.77.5.9/24')] })).toEqual([]);
  expect(found({})).toEqual([]);
});

describe('a VPN', () => {
  const vpn = adapter('10.77.9.6/24', 3, { name: 'tun0', kind: 'vpn' });

  test('stands out while it is up', () => {
    expect(found({ adapters: [lead(), vpn] })).toEqual([
      '"tun0" is a VPN and is up: it may hide the site from this computer.',
    ]);
  });

  test('does not while it is down, has no address, or is on a phone', () => {
    const phone = { ...vpn, owner: 'phone' as const };
    for (const one of [{ ...vpn, isUp: at(false, 3) }, { ...vpn, addresses: [] }, phone])
      expect(found({ adapters: [lead(), one] })).toEqual([]);
  });
});

describe('an address that a computer gave itself (RFC 3927, section 2.1)', () => {
  test.each(['169.254.1.0', '169.254.254.255'])('stands out: %s', (text) => {
    expect(found({ adapters: [wifi(`${text}/16`)] })).toEqual([
      `"wlan0" gave itself ${text}: it found nobody who hands out addresses.`,
    ]);
  });

  test('does not where it is next to it', () => {
    expect(found({ adapters: [wifi('169.253.255.255/16')] })).toEqual([]);
  });
});

describe('two adapters in one range', () => {
  const words = '"eth0" and "wlan0" are in one range: replies may come back the wrong way. Unplug one.';

  test('stand out', () => {
    expect(found({ adapters: [lead(), wifi('172.23.40.6/24')] })).toEqual([words]);
    expect(found({ adapters: [lead(), wifi('172.23.40.6')] })).toEqual([words]);
  });

  test('do not where one is in another range, is off, or is the computer itself', () => {
    expect(found({ adapters: [lead(), wifi('172.23.41.6/24')] })).toEqual([]);
    expect(found({ adapters: [lead(), wifi('172.23.40.6/24', { isUp: at(false, 2) })] })).toEqual([]);
    expect(found({ adapters: [lead(), wifi('172.23.40.6/24', { kind: 'loopback' })] })).toEqual([]);
    expect(found({ adapters: [lead(), wifi('172.23.40.6/24', { owner: 'camera' })] })).toEqual([]);
  });

  test('of no known range do not', () => {
    const bare = lead({ addresses: adapter('172.23.40.5', 1).addresses });
    expect(found({ adapters: [bare, wifi('172.23.40.6/24')] })).toEqual([]);
  });
});

describe('who handed the address out', () => {
  const gateways = [addressAt('172.23.40.1', 3)];

  test('stands out where it is not the gateway', () => {
    const own = lead({ gateways, dhcpServer: addressAt('172.23.40.2', 4) });
    expect(found({ adapters: [own] })).toEqual([
      'The address of "eth0" came from 172.23.40.2, not from its gateway 172.23.40.1.',
    ]);
  });

  test('does not where either is unknown', () => {
    expect(found({ adapters: [lead({ gateways })] })).toEqual([]);
    expect(found({ adapters: [lead({ dhcpServer: addressAt('172.23.40.2', 4) })] })).toEqual([]);
  });
});

describe('a gateway', () => {
  const words =
    'The gateway 172.23.99.1 of "eth0" lies outside its range 172.23.40.0/24: it cannot be reached.';
  const gateways = [addressAt('172.23.99.1', 3)];

  test('stands out where it lies outside the range', () => {
    expect(found({ adapters: [lead({ gateways })] })).toEqual([words]);
  });

  test('does not where a second address reaches it, or no range is known', () => {
    const both = [...lead().addresses, ...adapter('172.23.99.9/24', 2).addresses];
    expect(found({ adapters: [lead({ gateways, addresses: both })] })).toEqual([]);
    expect(found({ adapters: [lead({ gateways, addresses: adapter('172.23.40.5', 1).addresses })] })).toEqual(
      [],
    );
  });
});

describe('two MAC addresses for one address', () => {
  const [one, other] = ['02:00:5e:10:00:57', '02:00:5e:10:00:58'];
  const words = `Two devices answer at 172.23.40.57: ${one}, ${other}.`;
  const row = (mac: string | undefined, line: number, text = '172.23.40.57'): Neighbour => ({
    address: address(text),
    ...(mac === undefined ? {} : { mac }),
    state: 'unknown',
    line,
  });
  const answers = (macs: readonly string[]) => [{ address: address('172.23.40.57'), macs, line: 1 }];

  test('stand out of answers by hand, of two tables, and of both', () => {
    expect(found({ arps: answers([one, other]) })).toEqual([words]);
    expect(found({ neighbours: [row(one, 1), row(other, 9)] })).toEqual([words]);
    expect(found({ arps: answers([one]), neighbours: [row(other, 9)] })).toEqual([words]);
  });

  test('do not where it is the same one, another address, or nobody answered', () => {
    expect(found({ arps: answers([one, one]), neighbours: [row(one, 9)] })).toEqual([]);
    expect(found({ neighbours: [row(one, 1), row(other, 2, '172.23.40.58')] })).toEqual([]);
    expect(found({ neighbours: [row(one, 1), row(undefined, 2)] })).toEqual([]);
  });
});
