import { describe, expect, test } from 'vitest';
import { readPaste } from '../../src/intake/paste.js';
import { timesAsLong } from '../timing/times-as-long.js';
import { yardsOf } from '../timing/yards.js';
import { EVERY_SAMPLE } from './every-sample.js';

const MEGABYTE = 1_000_000;

/** A piece again and again, up to so many bytes of UTF-8. */
function filled(piece: string, bytes: number): string {
  return piece.repeat(Math.ceil(bytes / new TextEncoder().encode(piece).length));
}

function yardsToPaste(text: string, most: number): number {
  return yardsOf(() => readPaste(text), most);
}

/** So many yards five megabytes may take, and so many a smaller text, that may take more a byte as it starts from cold. */
const FIVE = 200;
const SMALL = 150_000;
const SMALL_MOST = 16;

const EVERYTHING = [...EVERY_SAMPLE.values()].join('\n');

/** Nothing in it, or nearly something. */
const DENSE: readonly string[] = [
  'a',
  '1',
  '1.',
  'a:',
  'a: ',
  '[',
  '({[<',
  '"',
  '\\',
  '/',
  '- ',
  '* ',
  '= ',
  '> ',
  '://',
  '. . . :',
  'user ',
  'user: a ',
  'password ',
  'password: a ',
  '/home/a/',
  'curl -u ',
  'http://a@',
  'a@b:~$ ',
  'Ã¼',
  'é',
  '中',
  '　',
  '\u200b',
  '😀',
  ' ',
  '\t',
  '1.1.1.1 ',
  '255.255.255.0 ',
  '2001:db8::1 ',
  '64 bytes from ',
  'a _seq=1 ',
  'PING a (',
  'Reply from 172.23.40.57: bytes=32 time',
  'IP address 172.23.40.57 ',
  'The camera at the gate is dark ',
  '\n',
  ' \n',
  'a\n',
  'a b\n',
  '1.1.1.1\n',
  '255.255.255.0\n',
  'a:\n',
  'a: b\n',
  '[\n',
  '[{"dst":\n',
  '"a"\n',
  '=\n',
  '***\n',
  '*** a\n',
  'Server: a\n',
  'Server: a\nAddress: 1.1.1.1\n',
  'Name: a\n',
  '. . . :\n172.23.40.57\n',
  'DNS request timed out.\n',
  '1 1 1 1 1 1\n',
  '1  *  *  *  a\n',
  '1  <1 ms  <1 ms  <1 ms\n',
  '1.1.1.1 0 0 0\n',
  'eth0 \n',
  'eth0 UP\n',
  'eth0: flags=1<UP> mtu 1\n',
  'default via 1.1.1.1\n',
  'inet 1.1.1.1/24\n',
  '--- a ping statistics ---\n',
  'Ethernet adapter a:\n',
  'a a a a a a a a:\n',
  '================================================\n',
  'Camera\n',
  'Camera 1\nIP 1.1.1.1\n',
  'IP address\n1.1.1.1\n',
  'dhcp on\n',
  '$ ip addr\n',
  'C:\\a>b\n',
  ';; a timed out\n',
  'IPv4\n',
  'a  b  c\n',
];

const FOLDERS = [...new Set([...EVERY_SAMPLE.keys()].map((path) => path.split('/')[0] ?? ''))];

function samplesIn(folder: string): string {
  return [...EVERY_SAMPLE]
    .flatMap(([path, text]) => (path.startsWith(`${folder}/`) ? [text] : []))
    .join('\n');
}

// Measured with Node 20.20, on two cores with and without five busy processes beside it: 98 to 137 yards of 11 to 19 ms.
describe('five megabytes', () => {
  test.each([
    ['every sample, one behind the other', EVERYTHING],
    [
      'nothing much, in every way',
      DENSE.map((piece) => piece.repeat(Math.ceil(500 / piece.length))).join('\n'),
    ],
  ])(
    'of %s are read in time',
    (_, text) => {
      expect(yardsToPaste(filled(text, 5 * MEGABYTE), FIVE)).toBeLessThan(FIVE);
    },
    120_000,
  );
});

describe('five times as much', () => {
  test.each([
    'a: ',
    'user: a ',
    '. . . :',
    '1.1.1.1 ',
    'The camera at the gate is dark ',
    'a\n',
    '*** a\n',
    '\n',
  ])(
    'of %j takes less than eight times as long',
    (piece) => {
      const [one, five] = [filled(piece, 0.4 * MEGABYTE), filled(piece, 2 * MEGABYTE)];
      const times = timesAsLong(
        () => readPaste(five),
        () => readPaste(one),
        (found) => found < 8,
      );
      expect(times).toBeLessThan(8);
    },
    120_000,
  );
});

// That it grows no faster than the text is held above; so a smaller one tells as much, in less time. The slowest of
// them took 10.8 yards.
describe('a hundred and fifty kilobytes', () => {
  test.each(FOLDERS)(
    'of samples for %s',
    (folder) => {
      expect(yardsToPaste(filled(samplesIn(folder), SMALL), SMALL_MOST)).toBeLessThan(SMALL_MOST);
    },
    60_000,
  );

  test.each(DENSE)(
    'of %j',
    (piece) => {
      expect(yardsToPaste(filled(piece, SMALL), SMALL_MOST)).toBeLessThan(SMALL_MOST);
    },
    60_000,
  );
});

test('many adapters of many names, with as many routes, are joined in time', () => {
  const pair = (_: unknown, at: number): string =>
    `default via 172.23.${at % 256}.1 dev eth${at}\n${at}: eth${at}: <UP,LOWER_UP> mtu 1500\n    inet 172.23.40.57/24 scope global eth${at}`;
  const text = Array.from({ length: 20_000 }, pair).join('\n');
  expect(yardsToPaste(text, FIVE)).toBeLessThan(FIVE);
}, 60_000);

test('one adapter told of again and again is joined in time', () => {
  const text =
    'eth0: flags=4163<UP,RUNNING> mtu 1500\n    inet6 fe80::1 prefixlen 64\n\nnothing of it\n\n'.repeat(
      20_000,
    );
  expect(yardsToPaste(text, FIVE)).toBeLessThan(FIVE);
}, 60_000);
