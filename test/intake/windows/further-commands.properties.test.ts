import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestMilliseconds } from '../../timing/times-as-long.js';
import { yardsOf } from '../../timing/yards.js';
import { addressesIn, addressesOf, linesIn, plainLines, readAlone, samplesOf, shown } from '../unix/shown.js';
import { FURTHER_COMMANDS } from './further-commands.js';

const ALL = FURTHER_COMMANDS.flatMap((parser) => samplesOf(parser.name));
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
  '*** ',
  '"',
  '= ',
  ' ms ',
  '> ',
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

describe.each(FURTHER_COMMANDS)('$name, for any text', (parser) => {
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

describe('a trace of any hops', () => {
  const hop = fc.constantFrom('answered', 'named', 'silent', 'half', 'russian');

  test('gives each hop its number, and an address to those that answered', () => {
    fc.assert(
      fc.property(fc.array(hop, { minLength: 1, maxLength: 30 }), fc.boolean(), (kinds, isCut) => {
        const printed: Readonly<Record<string, string>> = {
          answered: '    <1 ms    <1 ms     2 ms  10.77.5.1',
          named: '    12 ms    11 ms    12 ms  cam.example [10.77.5.1]',
          silent: '     *        *        *     Request timed out.',
          half: '     *       11 ms     *     10.77.5.1',
          russian: '     1 ms     1 ms    <1 мс  10.77.5.1',
        };
        const rows = kinds.map((kind, at) => `${String(at + 1).padStart(3)}${printed[kind]}`);
        const head = ['Tracing route to 172.23.40.57 over a maximum of 30 hops', ''];
        const text = [...head, ...rows, ...(isCut ? [] : ['', 'Trace complete.'])].join('\n');
        const [parser] = FURTHER_COMMANDS.filter(({ name }) => name === 'tracert');
        const [trace, ...others] =
          parser === undefined ? [] : (readAlone(parser, plainLines(text)).seen.traces ?? []);
        expect(others).toEqual([]);
        expect(trace?.hops.map(({ number, address }) => [number, address !== undefined])).toEqual(
          kinds.map((kind, at) => [at + 1, kind !== 'silent']),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('a table of any routes', () => {
  const octet = fc.integer({ min: 0, max: 255 });
  const row = fc.record({
    octets: fc.tuple(fc.integer({ min: 1, max: 223 }), octet, octet, octet),
    prefix: fc.integer({ min: 0, max: 32 }),
    gateway: fc.constantFrom('172.23.40.1', 'On-link', 'Auf Verbindung', '在链路上', 'En vínculo'),
    metric: fc.integer({ min: 0, max: 9999 }),
  });

  test('gives each with its network, its mask and its metric', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), (rows) => {
        const dotted = (bits: number): string =>
          [24, 16, 8, 0].map((shift) => Math.floor(bits / 2 ** shift) % 256).join('.');
        const networks = rows.map(({ octets: [a, b, c, d], prefix }) => {
          const bits = a * 2 ** 24 + b * 2 ** 16 + c * 2 ** 8 + d;
          return bits - (bits % 2 ** (32 - prefix));
        });
        const masks = rows.map(({ prefix }) => 2 ** 32 - 2 ** (32 - prefix));
        const text = rows
          .map(({ gateway, metric }, at) =>
            [dotted(networks[at] ?? 0), dotted(masks[at] ?? 0), gateway, '172.23.40.57', String(metric)]
              .map((word) => word.padStart(17))
              .join(''),
          )
          .join('\n');
        const [parser] = FURTHER_COMMANDS.filter(({ name }) => name === 'route-print');
        const routes = parser === undefined ? [] : (readAlone(parser, plainLines(text)).seen.routes ?? []);
        expect(
          routes.map(({ to, mask, via, metric }) => [to.bits, mask.prefix, via !== undefined, metric]),
        ).toEqual(
          rows.map(({ prefix, gateway, metric }, at) => [
            networks[at],
            prefix,
            gateway === '172.23.40.1',
            metric,
          ]),
        );
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
    ['traces', 'Tracing route to 172.23.40.57 over a maximum of 30 hops\n'],
    ['halves of traces', 'over a maximum of 30 hops:\n172.23.40.57 [172.23.40.57]\n'],
    ['hops', '  1     *        *        *     Request timed out.\n'],
    ['servers', 'Server:  router.example\nAddress:  172.23.40.1\n'],
    ['names', 'Name:    cam.example\nAddress:  203.0.113.9\n'],
    ['silence', 'DNS request timed out.\n    timeout was 2 seconds.\n'],
    ['complaints', "*** a can't find b: Non-existent domain\n"],
    ['stars', '*** '.repeat(80).concat('\n')],
    ['dots and words', '*** '.concat('a.b '.repeat(70)).concat(': x\n')],
    ['rules', `${'='.repeat(75)}\n`],
    ['titles', 'Active Routes:\n'],
    ['columns', 'Network Destination        Netmask          Gateway\n'],
    ['routes', '          0.0.0.0          0.0.0.0      172.23.40.1     172.23.40.57     25\n'],
    ['headings', 'Configuration for interface "Ethernet"\n'],
    ['quotes', '"a" '.repeat(20).concat('\n')],
    ['fields', '    DHCP enabled:                         No\n'],
    ['properties', 'InterfaceAlias : Ethernet\nComputerName : a\n'],
    ['warnings', 'WARNING: TCP connect to (172.23.40.57 : 554) failed\n'],
    ['prompts', 'C:\\>\n'],
    ['open prompts', `C:\\${'a\\'.repeat(900)}\n`],
  ];

  test.each(hostile)('of %s is read in time that grows with it', { timeout: 120_000 }, (_name, text) => {
    for (const parser of FURTHER_COMMANDS) {
      const lines = plainLines(text.repeat(Math.ceil(300_000 / text.length)));
      const took = Math.round(bestMilliseconds(() => readAlone(parser, lines), 750));
      expect(took >= 750 ? `${parser.name} took ${took} ms` : '').toBe('');
    }
  });

  test('of 5 MB of all samples is read within seconds', { timeout: 60_000 }, () => {
    const once = ALL.map((sample) => sample.text).join('\n\n');
    const lines = plainLines(once.repeat(Math.ceil(5_000_000 / once.length)));
    // 64 to 89 yards were measured, on a free machine and a busy one.
    const readAll = (): void => {
      for (const parser of FURTHER_COMMANDS) readAlone(parser, lines);
    };
    expect(yardsOf(readAll, 180)).toBeLessThan(180);
  });
});
