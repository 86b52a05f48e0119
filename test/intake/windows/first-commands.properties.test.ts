import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestMilliseconds } from '../../timing/times-as-long.js';
import { yardsOf } from '../../timing/yards.js';
import { addressesIn, addressesOf, linesIn, plainLines, readAlone, samplesOf, shown } from '../unix/shown.js';
import { FIRST_COMMANDS } from './first-commands.js';

const ALL = FIRST_COMMANDS.flatMap((parser) => samplesOf(parser.name));
const NOISE = [
  '',
  ' ',
  '\t',
  ':',
  ' . . . :',
  '[',
  '(',
  '172.23.40.',
  '%',
  ' --- 0x',
  '= ',
  'TTL=',
  'PING: ',
  '🙂',
  '\u0000',
];

/** A sample with lines gone, doubled or changed, cut off somewhere. */
const mangled = fc
  .record({
    sample: fc.constantFrom(...ALL),
    other: fc.constantFrom(...ALL),
    edits: fc.array(
      fc.record({
        at: fc.nat({ max: 4000 }),
        length: fc.nat({ max: 40 }),
        put: fc.constantFrom(...NOISE, '\n', '\n\n\n'),
      }),
      { maxLength: 8 },
    ),
    cut: fc.nat({ max: 4000 }),
    isJoined: fc.boolean(),
  })
  .map(({ sample, other, edits, cut, isJoined }) => {
    let text = isJoined ? `${sample.text}${other.text}` : sample.text;
    for (const { at, length, put } of edits) {
      const place = at % (text.length + 1);
      text = `${text.slice(0, place)}${put}${text.slice(place + length)}`;
    }
    return text.slice(0, Math.max(1, cut));
  });

describe.each(FIRST_COMMANDS)('$name, for any text', (parser) => {
  test('never throws, takes what it claims, and gives only lines and addresses of the text', () => {
    fc.assert(
      fc.property(mangled, (text) => {
        const lines = plainLines(text);
        const { seen, understood } = readAlone(parser, lines);
        for (const number of [...understood, ...linesIn(seen)]) {
          expect(number >= 1 && number <= lines.length).toBe(true);
        }
        const written = addressesOf(text.replaceAll('\n', ' '));
        const joined = addressesOf(text.replaceAll('\n', ''));
        const strange = addressesIn(seen).filter((one) => !written.has(one) && !joined.has(one));
        expect(strange).toEqual([]);
      }),
      { numRuns: 600 },
    );
  });

  test('claims no line before the one asked from, and claims again what it claimed', () => {
    fc.assert(
      fc.property(mangled, fc.nat({ max: 60 }), (text, from) => {
        const lines = plainLines(text);
        const claim = parser.claims(lines, from);
        expect(claim === -1 || (claim >= from && claim < lines.length)).toBe(true);
        if (claim < 0) return;
        expect(parser.claims(lines, claim)).toBe(claim);
        expect(parser.take(lines, claim).lines.size).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });

  test.each(samplesOf(parser.name))(
    'reads $name also with other line numbers and other line ends',
    ({ text }) => {
      const lines = plainLines(text);
      const moved = lines.map((line) => ({ ...line, number: line.number * 3 + 100 }));
      const numbers = [...readAlone(parser, lines).understood].map((number) => number * 3 + 100);
      expect([...readAlone(parser, moved).understood]).toEqual(numbers);
      const windows = readAlone(parser, plainLines(text.replaceAll('\n', '\r\n')));
      expect(shown(windows.seen)).toEqual(shown(readAlone(parser, lines).seen));
    },
  );
});

describe('a ping of any numbers', () => {
  const times = fc.constantFrom('time<1ms', 'time=12ms');
  const rows = fc.array(fc.constantFrom('reply', 'silent', 'host', 'net', 'failed'), {
    minLength: 1,
    maxLength: 12,
  });

  test('counts as received only what the target itself answered', () => {
    fc.assert(
      fc.property(rows, times, (kinds, time) => {
        const printed: Readonly<Record<string, string>> = {
          reply: `Reply from 172.23.40.57: bytes=32 ${time} TTL=64`,
          silent: 'Request timed out.',
          host: 'Reply from 172.23.40.5: Destination host unreachable.',
          net: 'Reply from 172.23.40.1: Destination net unreachable.',
          failed: 'PING: transmit failed. General failure.',
        };
        const replies = kinds.filter((kind) => kind === 'reply').length;
        const answered = kinds.filter((kind) => kind !== 'silent' && kind !== 'failed').length;
        const text = [
          'Pinging 172.23.40.57 with 32 bytes of data:',
          ...kinds.map((kind) => printed[kind] ?? ''),
          '',
          'Ping statistics for 172.23.40.57:',
          `    Packets: Sent = ${kinds.length}, Received = ${answered}, Lost = ${kinds.length - answered} (0% loss),`,
        ].join('\n');
        const [parser] = FIRST_COMMANDS.filter(({ name }) => name === 'windows-ping');
        const pings = parser === undefined ? [] : (readAlone(parser, plainLines(text)).seen.pings ?? []);
        expect(pings.map(({ sent, received, troubles }) => [sent, received, troubles.length])).toEqual([
          [kinds.length, replies, kinds.length - replies],
        ]);
        // The same without the closing lines.
        const open = text.slice(0, text.indexOf('\n\n'));
        const cut = parser === undefined ? [] : (readAlone(parser, plainLines(open)).seen.pings ?? []);
        expect(cut.map(({ sent, received }) => [sent, received])).toEqual([[kinds.length, replies]]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a text without end', () => {
  const hostile: readonly (readonly [string, string])[] = [
    ['one letter', 'a'.repeat(1999).concat('\n')],
    ['blanks', ' '.repeat(1998).concat('x:\n')],
    ['dots', `a${' .'.repeat(990)}\n`],
    ['colons', ': '.repeat(900).concat('\n')],
    ['short colons', 'a:\n'],
    ['signs', '= 1 '.repeat(90).concat(':\n')],
    ['addresses', '172.23.40.57 '.repeat(25).concat(':\n')],
    ['IPv6', 'fe80::1:'.repeat(40).concat('\n')],
    ['headings', 'Ethernet adapter Ethernet:\n'],
    ['titles', 'Windows IP Configuration\n'],
    ['fields', '   IPv4 Address. . . . . . . . . . . : 172.23.40.57\n'],
    ['pings', 'Pinging 172.23.40.57 with 32 bytes of data:\n'],
    ['silence', 'Request timed out.\n'],
    ['closing lines', 'Ping statistics for 172.23.40.57:\n'],
    ['neighbours', '  172.23.40.57          02-00-5e-10-00-57     dynamic\n'],
  ];

  test.each(hostile)('of %s is read in time that grows with it', { timeout: 120_000 }, (_name, text) => {
    for (const parser of FIRST_COMMANDS) {
      const lines = plainLines(text.repeat(Math.ceil(300_000 / text.length)));
      const took = Math.round(bestMilliseconds(() => readAlone(parser, lines), 750));
      expect(took >= 750 ? `${parser.name} took ${took} ms` : '').toBe('');
    }
  });

  test('of 5 MB of all samples is read within seconds', { timeout: 60_000 }, () => {
    const once = ALL.map((sample) => sample.text).join('\n\n');
    const lines = plainLines(once.repeat(Math.ceil(5_000_000 / once.length)));
    // 33 to 55 yards were measured, on a free machine and a busy one.
    const readAll = (): void => {
      for (const parser of FIRST_COMMANDS) readAlone(parser, lines);
    };
    expect(yardsOf(readAll, 150)).toBeLessThan(150);
  });
});
