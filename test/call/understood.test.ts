import { describe, expect, test } from 'vitest';
import { understood } from '../../src/call/understood.js';
import type { Paste } from '../../src/intake/paste.js';
import { readPaste } from '../../src/intake/paste.js';
import { type Adapter, NOTHING_SEEN, type Seen } from '../../src/intake/seen.js';
import { address } from '../arithmetic/given.js';
import { lineWith, SITE } from '../intake/a-site.js';
import { adapter, addressAt, at, ping } from '../intake/made.js';

function paste(seen: Partial<Seen>, differs: Partial<Paste> = {}): Paste {
  return {
    text: '',
    dropped: 0,
    reading: { seen: { ...NOTHING_SEEN, ...seen }, unread: [], parsers: [] },
    way: { adapter: undefined, why: 'none', passedOver: [] },
    ...differs,
  };
}

const lines = (seen: Partial<Seen>, differs: Partial<Paste> = {}): readonly string[] =>
  understood(paste(seen, differs));
const phone = (differs: Partial<Adapter>): readonly string[] =>
  lines({ adapters: [adapter('172.23.40.77/24', 3, { owner: 'phone', ...differs })] });

test('a whole text, line by line', () => {
  expect(understood(readPaste(SITE))).toEqual([
    'Read from the text',
    `  Computer "Ethernet": network lead, 172.23.40.5, mask 255.255.255.0, gateway 172.23.40.1, name server 172.23.40.1, address given by the router, given by 172.23.40.2 (line ${lineWith('172.23.40.5(')})`,
    `  "Camera": 172.23.40.57, mask 255.255.255.0, gateway 172.23.41.1, name server 172.23.40.1, typed in by hand (line ${lineWith('IP address:')})`,
    '  Ping 172.23.40.57: 4 of 4 came back',
    '  Neighbours seen: 3',
    'Towards the camera: "Ethernet". The camera lies in its range.',
    'The address of "Ethernet" came from 172.23.40.2, not from its gateway 172.23.40.1.',
    'Not understood, and kept as it is: 4 of 48 lines.',
    'Left out before anything is kept: 10 passwords, keys or names.',
  ]);
});

describe('an adapter', () => {
  test('is said with whose it is, and with its name where it has one', () => {
    expect(phone({})[1]).toBe('  Phone: 172.23.40.77, mask 255.255.255.0 (line 3)');
    expect(phone({ name: 'wlan0', kind: 'wifi' })[1]).toBe(
      '  Phone "wlan0": Wi-Fi, 172.23.40.77, mask 255.255.255.0 (line 3)',
    );
  });

  test('is not called a phone twice', () => {
    expect(phone({ name: 'Phone upstairs' })[1]).toContain('  "Phone upstairs": 172.23.40.77');
  });

  test('without an address says so, by the line of its gateway', () => {
    expect(phone({ addresses: [], isUp: at(false, 2), gateways: [addressAt('172.23.40.1', 7)] })[1]).toBe(
      '  Phone: not plugged in, or off, no address, gateway 172.23.40.1 (line 7)',
    );
  });

  test('without a line is said without one', () => {
    expect(phone({ addresses: [] })[1]).toBe('  Phone: no address');
  });
});

describe('what was tried', () => {
  test('is said try by try', () => {
    const target = { target: 'cam.example', line: 1 };
    const [camera, router] = [address('172.23.40.57'), address('172.23.40.1')];
    expect(
      lines({
        pings: [ping('172.23.40.57', 4, 3, 1), { ...ping('172.23.40.57', 4, 0, 1), address: camera }],
        traces: [
          {
            ...target,
            hops: [
              { number: 1, address: router, line: 2 },
              { number: 2, line: 3 },
            ],
          },
          { ...target, address: camera, hops: [] },
        ],
        lookups: [
          { name: 'cam.example', addresses: [camera, router], outcome: 'answered', line: 4 },
          { name: 'none.example', addresses: [], outcome: 'no-such-name', line: 5 },
        ],
        ports: [
          { ...target, port: 80, isOpen: true },
          { ...target, port: 554, isOpen: false },
        ],
      }),
    ).toEqual([
      'Read from the text',
      '  Ping 172.23.40.57: 3 of 4 came back',
      '  Ping 172.23.40.57: 0 of 4 came back',
      '  Way to cam.example: 1 hops answered',
      '  Way to 172.23.40.57: 0 hops answered',
      '  Name cam.example: 172.23.40.57, 172.23.40.1',
      '  Name none.example: no address',
      '  cam.example, port 80: open',
      '  cam.example, port 554: closed or no answer',
    ]);
  });
});

describe('the way to the camera', () => {
  const kinds = ['lead', 'vpn', 'virtual', 'loopback', 'wifi'] as const;
  const adapters = kinds.map((kind, line) => adapter(`10.77.${line}.9/24`, line, { name: kind, kind }));

  test('is said with its reason, and what was passed over, but for the computer itself', () => {
    const passedOver = [
      { index: 1, why: 'vpn' as const },
      { index: 2, why: 'virtual' as const },
      { index: 3, why: 'loopback' as const },
      { index: 4, why: 'other-range' as const },
    ];
    expect(lines({ adapters }, { way: { adapter: 0, why: 'same-range', passedOver } }).slice(6)).toEqual([
      'Towards the camera: "lead". The camera lies in its range.',
      '"vpn" is a VPN: it leads away from the site.',
      '"virtual" is a virtual adapter.',
      '"wifi" is in another range than the camera.',
      '"vpn" is a VPN and is up: it may hide the site from this computer.',
    ]);
  });

  test('is asked for where several could lead there', () => {
    const two = adapters.slice(0, 1);
    expect(lines({ adapters: two }, { way: { adapter: undefined, why: 'several', passedOver: [] } })[2]).toBe(
      'Several could lead to the camera. Which one does?',
    );
  });

  test('is not spoken of where the text tells of no computer', () => {
    expect(phone({})).toHaveLength(2);
  });
});

describe('what was not understood', () => {
  test.each(['\n', '\r\n', '\r'])('is counted among all lines that are not blank, ended by %j', (end) => {
    const text = ['IP address: 172.23.40.57', 'mask 255.255.255.0', '', 'so long', '', 'farewell'].join(end);
    expect(understood(readPaste(text)).at(-1)).toBe('Not understood, and kept as it is: 2 of 4 lines.');
  });

  test('is all there is where nothing was', () => {
    expect(understood(readPaste('what a day\nso long'))).toEqual([
      'Nothing in this text was understood.',
      'Not understood, and kept as it is: 2 of 2 lines.',
    ]);
    expect(understood(readPaste(''))).toEqual(['Nothing in this text was understood.']);
  });
});
