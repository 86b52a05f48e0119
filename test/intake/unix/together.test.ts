import { describe, expect, test } from 'vitest';
import { read } from '../../../src/intake/read.js';
import { UNIX } from './parsers.js';
import { samplesOf, shown } from './shown.js';

/** Samples that have lines of another format in them, to show that their own parser leaves those alone. */
const MIXED: ReadonlySet<string> = new Set([
  'ip-route/two-defaults-and-ipv6.txt',
  'ip-neighbour/neigh-all-states.txt',
]);

const ALONE = UNIX.flatMap((parser) =>
  samplesOf(parser.name)
    .map((sample) => ({ ...sample, parser: parser.name, path: `${parser.name}/${sample.name}` }))
    .filter((sample) => !MIXED.has(sample.path)),
);

describe('all parsers together', () => {
  test.each(ALONE)('leave $path to its own', ({ text, seen, parser }) => {
    const reading = read(text, UNIX);
    expect(shown(reading.seen)).toEqual(seen);
    const names = new Set(reading.parsers.map((used) => used.name));
    names.delete('shell-prompt');
    expect([...names]).toEqual(parser === 'shell-prompt' ? [] : [parser]);
  });
});

describe('what people and Windows write', () => {
  const PROSE = [
    'ping: fine',
    'connect: the lead was out',
    'the picture is UP',
    'camera has address 172.23.40.57',
    'door (left:1) open',
    '1. Camera 12 3 metres from the gate',
    '172.23.40.57 via the router',
    'Internet:',
    'mira@firm.example: it costs 50 $ or so',
    'The camera (172.23.40.57) at the gate is dark',
    'IP 172.23.40.57 mask 255.255.255.0 gw 172.23.40.1',
    'Server: 172.23.40.1',
    'Link 2 went down, link 3 (left) did not',
    '64 cameras from 172.23.40.57 on',
  ];
  const WINDOWS = [
    'Windows IP Configuration',
    '   IPv4 Address. . . . . . . . . . . : 172.23.40.57(Preferred)',
    '   Subnet Mask . . . . . . . . . . . : 255.255.255.0',
    'Pinging 172.23.40.57 with 32 bytes of data:',
    'Reply from 172.23.40.57: bytes=32 time<1ms TTL=64',
    'Reply from 172.23.40.5: Destination host unreachable.',
    'Request timed out.',
    'Ping request could not find host nosuch.example. Please check the name and try again.',
    'Ping statistics for 172.23.40.57:',
    '    Packets: Sent = 4, Received = 4, Lost = 0 (0% loss),',
    'Interface: 172.23.40.5 --- 0xb',
    '  172.23.40.57          02-00-5e-10-00-57     dynamic',
    '  1    <1 ms    <1 ms    <1 ms  172.23.40.1',
    '  2     *        *        *     Request timed out.',
    '          0.0.0.0          0.0.0.0      172.23.40.1     172.23.40.57     25',
    'Server:  router.example',
    'Address:  172.23.40.1',
    "*** router.example can't find nosuch.example: Non-existent domain",
    'C:\\>ipconfig',
  ];

  test.each([...PROSE, ...WINDOWS])('%j is left alone', (text) => {
    expect(read(text, UNIX).parsers).toEqual([]);
  });

  test('and so is all of it together', () => {
    expect(read([...PROSE, ...WINDOWS].join('\n'), UNIX).parsers).toEqual([]);
  });
});
