import { describe, expect, test } from 'vitest';
import { readPaste, withOwner } from '../../src/intake/paste.js';
import { address } from '../arithmetic/given.js';
import { lineWith, SITE } from './a-site.js';

const TWO = `1: lo: <LOOPBACK,UP,LOWER_UP> mtu 65536 qdisc noqueue state UNKNOWN group default qlen 1000
    link/loopback 00:00:00:00:00:00 brd 00:00:00:00:00:00
    inet 127.0.0.1/8 scope host lo
       valid_lft forever preferred_lft forever
2: eth0: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc noqueue state UP group default qlen 1000
    link/ether 02:00:5e:10:00:05 brd ff:ff:ff:ff:ff:ff
    inet 172.23.40.5/24 brd 172.23.40.255 scope global eth0
       valid_lft forever preferred_lft forever
3: wlan0: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc noqueue state UP group default qlen 1000
    link/ether 02:00:5e:10:00:06 brd ff:ff:ff:ff:ff:ff
    inet 10.77.5.9/24 brd 10.77.5.255 scope global wlan0
       valid_lft forever preferred_lft forever
`;

describe('a pasted text', () => {
  test('loses its secrets before anything reads it, and no line', () => {
    const { text, dropped, reading } = readPaste(SITE);
    expect(text.split('\n')).toHaveLength(SITE.split('\n').length);
    expect(dropped).toBe(10);
    const everything = JSON.stringify([text, reading]).toLowerCase();
    for (const secret of ['rosa', 'kettle', 'quay-pc-7', 'harbour.example', 'boathouse', 'herring', '4711'])
      expect(everything).not.toContain(secret);
  });

  test('is read by one parser after the other, and what nobody understood comes back', () => {
    const { reading } = readPaste(SITE);
    expect(reading.parsers.map(({ name }) => name)).toEqual([
      'windows-prompt',
      'ipconfig',
      'windows-prompt',
      'windows-arp',
      'windows-prompt',
      'windows-ping',
      'windows-prompt',
      'retyped',
    ]);
    expect(reading.unread.map(({ number }) => number)).toEqual([
      lineWith('DEMO20417733'),
      lineWith('boathouse'),
      lineWith('herring'),
      lineWith('PIN'),
    ]);
  });

  test('of several outputs is one thing: adapters are joined by name', () => {
    const { seen } = readPaste(`${TWO}\ndefault via 172.23.40.1 dev eth0\n`).reading;
    expect(seen.adapters.map(({ name, gateways }) => [name, gateways.map(({ line }) => line)])).toEqual([
      ['lo', []],
      ['eth0', [14]],
      ['wlan0', []],
    ]);
  });
});

describe('the way to the camera', () => {
  test('is open where two adapters are as good', () => {
    expect(readPaste(TWO.replaceAll('eth0', 'net0').replaceAll('wlan0', 'net1')).way).toMatchObject({
      adapter: undefined,
      why: 'several',
    });
  });

  test('leads to the address that is known, or to the only camera of the text', () => {
    expect(readPaste(TWO, address('10.77.5.57')).way).toMatchObject({ adapter: 2, why: 'same-range' });
    const page = '\nCamera\nIP address: 10.77.5.57\nSubnet mask: 255.255.255.0\n';
    expect(readPaste(TWO + page).way).toMatchObject({ adapter: 2, why: 'same-range' });
  });

  test('leads to the address that is known rather than to the camera of the text', () => {
    const page = '\nCamera\nIP address: 10.77.5.57\nSubnet mask: 255.255.255.0\n';
    expect(readPaste(TWO + page, address('172.23.40.57')).way).toMatchObject({ adapter: 1 });
  });
});

describe('numbers that the text gives to nobody', () => {
  const paste = readPaste(`${TWO}\n10.77.5.57\n255.255.255.0\n`);

  test('become those of the camera once somebody says so, and the way is found anew', () => {
    expect(paste.reading.seen.adapters.at(-1)).toMatchObject({ owner: 'unknown' });
    const index = paste.reading.seen.adapters.length - 1;
    const owned = withOwner(paste, index, 'camera');
    expect(owned.reading.seen.adapters.map(({ owner }) => owner)).toEqual([
      'computer',
      'computer',
      'computer',
      'camera',
    ]);
    expect(owned.way).toMatchObject({ adapter: 2, why: 'same-range' });
    expect([owned.text, owned.reading.unread]).toEqual([paste.text, paste.reading.unread]);
  });

  test('leave the way to the camera that is known', () => {
    const owned = withOwner(paste, 3, 'phone', address('172.23.40.57'));
    expect(owned.way).toMatchObject({ adapter: 1, why: 'same-range' });
  });
});

test('nothing in, nothing out', () => {
  const { text, dropped, reading, way } = readPaste('');
  expect([text, dropped, reading.parsers, reading.unread, way.why]).toEqual(['', 0, [], [], 'none']);
});
