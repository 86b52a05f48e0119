import { describe, expect, test } from 'vitest';
import { linesOf } from '../../../src/intake/clean.js';
import { PARSERS } from '../../../src/intake/parsers.js';
import { read } from '../../../src/intake/read.js';
import { withoutSecrets } from '../../../src/intake/secrets.js';
import { UNIX } from '../unix/parsers.js';
import { readAlone, samplesOf, shown } from '../unix/shown.js';
import { FIRST_COMMANDS } from './first-commands.js';

const OTHERS = PARSERS.filter((parser) => !FIRST_COMMANDS.includes(parser) && parser.readsLeftovers !== true);
const ALL = [...OTHERS, ...FIRST_COMMANDS];
const OWN = FIRST_COMMANDS.flatMap(({ name }) =>
  samplesOf(name).map((sample) => ({ ...sample, parser: name, path: `${name}/${sample.name}` })),
);
const UNIX_SAMPLES = UNIX.flatMap(({ name }) =>
  samplesOf(name).map((sample) => ({ ...sample, path: `${name}/${sample.name}` })),
);

describe('among all parsers', () => {
  test.each(OWN)('$path is left to its own, whoever stands first', ({ text, seen, parser }) => {
    for (const parsers of [ALL, [...ALL].reverse()]) {
      const reading = read(text, parsers);
      expect(shown(pruned(reading.seen))).toEqual(seen);
      const names = new Set(reading.parsers.map((used) => used.name));
      names.delete('windows-prompt');
      expect([...names]).toEqual([parser]);
    }
  });

  // One sample of theirs has a row of Windows in it, which it leaves to others.
  test.each(UNIX_SAMPLES)('$path has no line for these but those that it leaves', ({ text, unread }) => {
    const lines = linesOf(text);
    const taken = FIRST_COMMANDS.flatMap((parser) => [...readAlone(parser, lines).understood]);
    expect(taken.filter((line) => !unread.includes(line))).toEqual([]);
  });

  test.each(OWN)('$path tells the same once secrets are dropped', ({ text, seen }) => {
    const told = shown(pruned(read(withoutSecrets(text).text, FIRST_COMMANDS).seen));
    expect(told).toEqual(seen);
  });

  test('a long paste of all three is taken apart', () => {
    const names = ['ipconfig/all-german.txt', 'windows-ping/every-kind-german.txt', 'windows-arp/german.txt'];
    const parts = names.map((name) => OWN.find(({ path }) => path === name)?.text ?? '');
    const { seen, unread } = read(parts.join(''), ALL);
    expect([seen.adapters.length, seen.pings.length, seen.neighbours.length, unread.length]).toEqual([
      3, 3, 2, 0,
    ]);
  });
});

describe('what people write', () => {
  test.each([
    'The camera 172.23.40.57: no picture at all',
    'Camera 172.23.40.57: port=80 user=2',
    'camera with 32 bytes:',
    'Our ping for today:',
    'PING cam.example (172.23.40.57) 56(84) bytes of data.',
    'ping: sendto: No route to host',
    'bytes from 172.23.40.57: icmp_seq=1 ttl=64 time=0.4 ms',
    '  3     *        *        *     Request timed out.',
    'It says request timed out',
    'Windows IP cameras are all dark',
    'Cameras on the windows side:',
    '172.23.40.57   02:00:5e:10:00:57   dynamic',
    '172.23.40.57',
    '          0.0.0.0          0.0.0.0      172.23.40.1     172.23.40.57     25',
    'C:\\>ipconfig /all',
    'Link 2 went down. . . then up again: 172.23.40.57',
    'Default gateway: 172.23.40.1',
    '    Packets: Sent = 4, Received = 4, Lost = 0 (0% loss),',
  ])('%j is left alone', (text) => {
    expect(read(text, FIRST_COMMANDS).parsers).toEqual([]);
  });
});

function pruned(seen: object): unknown {
  return Object.fromEntries(Object.entries(seen).filter(([, values]) => values.length > 0));
}
