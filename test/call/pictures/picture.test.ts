import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { pictureOf } from '../../../src/call/pictures/picture.js';
import { topicNamed } from '../../../src/call/topics.js';

function drawn(topic: string, given: Readonly<Record<string, string>>) {
  const result = topicNamed(topic)?.reckon(given);
  if (!result?.ok) throw new Error(`${topic}: not reckoned`);
  return pictureOf(topic, given, result.value.data);
}

describe('the addresses of a network as a bar', () => {
  const given = {
    'router-address': '172.23.40.1',
    'router-mask': '24',
    'dhcp-first': '172.23.40.100',
    'dhcp-last': '172.23.40.199',
    known: '172.23.40.21, 172.23.41.9',
  };

  test.each([
    ['172.23.40.22', '24'],
    ['10.77.5.130', '25'],
    ['172.20.9.200', '20'],
  ])('%s/%s: its marks lie where ipaddr.js puts their number', (address, mask) => {
    const bar = drawn('subnet', { address, mask });
    if (bar?.kind !== 'network') throw new Error('no bar');
    const first = ipaddr.IPv4.networkAddressFromCIDR(`${address}/${mask}`);
    const offset = numberOf(ipaddr.IPv4.parse(address)) - numberOf(first);
    expect(bar.marks[0]?.at).toBeCloseTo((offset + 0.5) / 2 ** (32 - Number(mask)), 9);
  });

  test('holds router, given-out range, what is taken, what to use, and the room that is left', () => {
    const bar = drawn('free-address', given);
    if (bar?.kind !== 'network') throw new Error('no bar');
    expect(bar.marks.map(({ kind, at }) => [kind, at === undefined])).toEqual([
      ['router', false],
      ['other', false],
      ['other', true],
      ['proposed', false],
    ]);
    expect(bar.dhcp?.from).toBeCloseTo(100.5 / 256, 9);
    // 254 less 100 given out, the router, one that is taken and the proposal.
    expect(bar.free).toContain('151');
    expect(bar.says).toContain('172.23.41.9');
  });

  test('marks every camera of a plan', () => {
    const bar = drawn('address-plan', { 'router-address': '172.23.40.1', 'router-mask': '24', cameras: '5' });
    if (bar?.kind !== 'network') throw new Error('no bar');
    expect(bar.marks.filter(({ kind }) => kind === 'proposed').length).toBe(5);
  });

  test('says in words what lies off it', () => {
    const bar = drawn('subnet', { address: '172.23.40.22', mask: '24', gateway: '172.23.41.1' });
    if (bar?.kind !== 'network') throw new Error('no bar');
    expect(bar.marks[1]).toMatchObject({ kind: 'router', at: undefined });
    expect(bar.says).toContain('Off it: default gateway 172.23.41.1');
  });
});

describe('the volts along a cable', () => {
  test('fall by the current times the loop, at best and at worst', () => {
    const volts = drawn('dc-supply', {
      'supply-volts': '12',
      length: '40 m',
      night: '0.4 A',
      wire: '0.5 mm2',
    });
    if (volts?.kind !== 'volts') throw new Error('no volts');
    // Ohm's law at best: 0.4 A over 2 x 40 m of 0.5 mm2 at -20 °C, 29.06 ohm per km.
    expect(volts.best.camera).toBeCloseTo(12 - 0.4 * 0.08 * 29.06, 2);
    expect(volts.worst.camera ?? 0).toBeLessThan(volts.best.camera ?? 0);
    expect(volts.foot).toBeLessThan(volts.worst.camera ?? 0);
    expect(volts.metres).toBe(40);
  });

  test('are none where the camera cannot run at worst, and that is said', () => {
    const volts = drawn('dc-supply', {
      'supply-volts': '12',
      length: '40 m',
      night: '0.8 A',
      wire: '0.5 mm2',
    });
    if (volts?.kind !== 'volts') throw new Error('no volts');
    expect(volts.worst.camera).toBeUndefined();
    expect(volts.says).toContain('no steady volts');
  });

  test('are not drawn as one line where other cameras hang on the same cable', () => {
    expect(
      drawn('dc-supply', { 'supply-volts': '12', length: '40 m', night: '0.2 A', others: '20 m 0.2 A' }),
    ).toBeUndefined();
  });

  test('over a network cable, from the port', () => {
    const volts = drawn('poe', { length: '60 m', 'camera-watts': '12' });
    expect(volts).toMatchObject({ kind: 'volts', metres: 60, best: { source: 57 }, worst: { source: 44 } });
  });
});

describe('the days on a card', () => {
  test('are those of the sum, with those that are wanted', () => {
    const days = drawn('storage', { main: '2 Mbit/s', capacity: '128 GB', days: '7' });
    if (days?.kind !== 'days') throw new Error('no days');
    // 128e9 bytes less 10 % over 2e6 / 8 x 86,400 bytes a day.
    expect(days.low).toBeCloseTo((128e9 * 0.9) / ((2e6 / 8) * 86_400), 9);
    expect(days.wanted).toBe(7);
    expect(days.whole).toBeGreaterThan(7);
  });
});

describe('who reaches whom', () => {
  const given = {
    'camera-address': '172.23.40.22',
    'camera-mask': '24',
    'camera-gateway': '172.23.41.1',
    'computer-address': '172.23.40.30',
    'computer-mask': '24',
    'computer-gateway': '172.23.40.1',
    'router-address': '172.23.40.1',
    'router-mask': '24',
  };

  test('has a line for each walk, and where it ends', () => {
    const reach = drawn('reach', given);
    if (reach?.kind !== 'reach') throw new Error('no reach');
    expect(reach.ways.map(({ from, to, outcome, endsAt }) => [from, to, outcome, endsAt])).toEqual([
      ['computer', 'camera', 'reaches', 'camera'],
      ['camera', 'computer', 'reaches', 'computer'],
      ['camera', 'internet', 'fails', 'camera'],
    ]);
    expect(reach.says).toContain('Camera to Internet: does not reach');
    expect(reach.says).toContain('gateway 172.23.41.1');
  });
});

test('a sum without a picture has none', () => {
  expect(drawn('address', { address: '172.23.40.22' })).toBeUndefined();
});

function numberOf(address: ipaddr.IPv4): number {
  return address.toByteArray().reduce((sum, byte) => sum * 256 + byte, 0);
}
