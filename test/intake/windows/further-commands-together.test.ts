import { describe, expect, test } from 'vitest';
import { linesOf } from '../../../src/intake/clean.js';
import { PARSERS } from '../../../src/intake/parsers.js';
import { read } from '../../../src/intake/read.js';
import { withoutSecrets } from '../../../src/intake/secrets.js';
import { UNIX } from '../unix/parsers.js';
import { readAlone, samplesOf, shown } from '../unix/shown.js';
import { FIRST_COMMANDS } from './first-commands.js';
import { FURTHER_COMMANDS } from './further-commands.js';

const WINDOWS = [...FIRST_COMMANDS, ...FURTHER_COMMANDS];
const OTHERS = PARSERS.filter((parser) => !WINDOWS.includes(parser) && parser.readsLeftovers !== true);
const ALL = [...WINDOWS, ...OTHERS];
/** Read as one of Unix where that stands first: the end of the server's IPv6 address looks like a port. */
const LEANS_ON_ORDER = new Set(['windows-nslookup/server-by-ipv6-english.txt']);
/** The name of what was tested stands under the label of the own computer's name, which is not kept. */
const HAS_DROPPED_NAME = new Set([
  'test-net-connection/detailed-and-way-there.txt',
  'test-net-connection/port-open.txt',
]);
const OWN = FURTHER_COMMANDS.flatMap(({ name }) =>
  samplesOf(name).map((sample) => ({ ...sample, parser: name, path: `${name}/${sample.name}` })),
);
const OTHER_SAMPLES = [...UNIX, ...FIRST_COMMANDS].flatMap(({ name }) =>
  samplesOf(name).map((sample) => ({ ...sample, path: `${name}/${sample.name}` })),
);

describe('among all parsers', () => {
  test.each(OWN)('$path is left to its own, whoever stands first', ({ text, seen, parser, path }) => {
    for (const parsers of LEANS_ON_ORDER.has(path) ? [ALL] : [ALL, [...ALL].reverse()]) {
      const reading = read(text, parsers);
      expect(shown(pruned(reading.seen))).toEqual(seen);
      const names = new Set(reading.parsers.map((used) => used.name));
      if (parser !== 'windows-prompt') names.delete('windows-prompt');
      expect([...names]).toEqual([parser]);
    }
  });

  // Some samples of theirs have prompts or outputs of Windows in them, which they leave to others.
  test.each(OTHER_SAMPLES)('$path has no line for these but those that it leaves', ({ text, unread }) => {
    const lines = linesOf(text);
    const taken = FURTHER_COMMANDS.flatMap((parser) => [...readAlone(parser, lines).understood]);
    expect(taken.filter((line) => !unread.includes(line))).toEqual([]);
  });

  test.each(OWN.filter(({ path }) => !HAS_DROPPED_NAME.has(path)))(
    '$path tells the same once secrets are dropped',
    ({ text, seen }) => {
      const told = shown(pruned(read(withoutSecrets(text).text, FURTHER_COMMANDS).seen));
      expect(told).toEqual(seen);
    },
  );

  test('a tested name that is not kept gives way to its address', () => {
    const { text } = OWN.find(({ path }) => path === 'test-net-connection/port-open.txt') ?? { text: '' };
    const { seen } = read(withoutSecrets(text).text, FURTHER_COMMANDS);
    expect(seen.ports.map(({ target, port, isOpen }) => [target, port, isOpen])).toEqual([
      ['172.23.40.57', 443, true],
    ]);
  });

  test('a long paste of all of them is taken apart', () => {
    const names = [
      'ipconfig/all-german.txt',
      'tracert/german.txt',
      'windows-nslookup/german.txt',
      'windows-ping/every-kind-german.txt',
      'route-print/german.txt',
      'windows-arp/german.txt',
      'netsh-config/german.txt',
      'test-net-connection/port-closed-german.txt',
      'net-ip-configuration/detailed.txt',
    ];
    const texts = names.map(
      (path) => [...OWN, ...OTHER_SAMPLES].find((one) => one.path === path)?.text ?? '',
    );
    const { seen, unread, parsers } = read(texts.map((text) => `C:\\>x\n${text}\n`).join(''), ALL);
    expect([seen.adapters, seen.traces, seen.lookups, seen.routes].map(({ length }) => length)).toEqual([
      6, 1, 2, 5,
    ]);
    expect([seen.pings, seen.neighbours, seen.ports].map(({ length }) => length)).toEqual([4, 2, 1]);
    expect(unread).toEqual([]);
    expect(new Set(parsers.map((used) => used.name)).size).toBe(10);
  });
});

describe('what people write', () => {
  test.each([
    'The camera 172.23.40.57: no picture at all',
    'traceroute to cam.example (172.23.40.57), 30 hops max, 60 byte packets',
    ' 1  172.23.40.1 (172.23.40.1)  0.5 ms  0.4 ms  0.4 ms',
    ' 2  * * *',
    '1 20 m 30 m 15 m lead',
    '2  172.23.40.57  is dark',
    'Der Zielname kamera.example stimmt',
    'Server: 172.23.40.9',
    'Server: nvr\nAddress: 172.23.40.9',
    'Server: nvr\nAddress: 172.23.40.9\nCamera: yard\nAddress: 172.23.40.57',
    'Name: yard\nAddress: 172.23.40.57',
    'Server:\t\t172.23.40.1\nAddress:\t172.23.40.1#53\n\nName:\tcam.example\nAddress: 203.0.113.9',
    "** server can't find nosuch.example: NXDOMAIN",
    "*** Can't find cam.example: No answer",
    '*** please help ***',
    '172.23.40.57 255.255.255.0 172.23.40.1 172.23.40.3 1',
    '172.23.40.57 255.255.255.0 172.23.40.1 2',
    '0.0.0.0         172.23.40.1     0.0.0.0         UG        0 0          0 eth0',
    '3... 2... 1... dark',
    '===',
    'Active Routes:',
    'he said "it works"\n    IP Address: 172.23.40.57 or so "yes"',
    'Configuration for interface "Ethernet"',
    'InterfaceAlias: Ethernet',
    'IPv4Address: 172.23.40.57',
    'ComputerName: desk',
    'WARNING: the picture is gone',
    'the disk C:\\ is full -> so what',
    'camera > router > internet',
  ])('%j is left alone', (text) => {
    expect(read(text, FURTHER_COMMANDS).parsers).toEqual([]);
  });
});

function pruned(seen: object): unknown {
  return Object.fromEntries(Object.entries(seen).filter(([, values]) => values.length > 0));
}
