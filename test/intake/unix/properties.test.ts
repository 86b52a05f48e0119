import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJson } from '../../../src/intake/unix/json.js';
import { bestMilliseconds } from '../../timing/times-as-long.js';
import { yardsOf } from '../../timing/yards.js';
import { UNIX } from './parsers.js';
import { addressesIn, addressesOf, linesIn, plainLines, readAlone, samplesOf } from './shown.js';

const ALL = UNIX.flatMap((parser) => samplesOf(parser.name));
const NOISE = [
  '',
  ' ',
  '\t',
  '[',
  '{',
  '"',
  '(',
  '172.23.40.',
  ': ',
  '--- ',
  'inet ',
  '\\',
  '%',
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
    joined: fc.boolean(),
  })
  .map(({ sample, other, edits, cut, joined }) => {
    let text = joined ? `${sample.text}${other.text}` : sample.text;
    for (const { at, length, put } of edits) {
      const place = at % (text.length + 1);
      text = `${text.slice(0, place)}${put}${text.slice(place + length)}`;
    }
    return text.slice(0, Math.max(1, cut));
  });

describe.each(UNIX)('$name, for any text', (parser) => {
  test('never throws, takes what it claims, and gives only lines and addresses of the text', () => {
    fc.assert(
      fc.property(mangled, (text) => {
        const lines = plainLines(text);
        const { seen, understood } = readAlone(parser, lines);
        for (const number of [...understood, ...linesIn(seen)]) {
          expect(number >= 1 && number <= lines.length).toBe(true);
        }
        const written = addressesOf(text);
        expect(addressesIn(seen).filter((address) => !written.has(address))).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test('claims no line twice and none before the one asked from', () => {
    fc.assert(
      fc.property(mangled, fc.nat({ max: 60 }), (text, from) => {
        const lines = plainLines(text);
        const claim = parser.claims(lines, from);
        expect(claim === -1 || (claim >= from && claim < lines.length)).toBe(true);
        if (claim >= 0) expect(parser.claims(lines, claim)).toBe(claim);
      }),
      { numRuns: 200 },
    );
  });

  test.each(samplesOf(parser.name))('reads $name also with other line numbers', ({ text }) => {
    const lines = plainLines(text);
    const moved = lines.map((line) => ({ ...line, number: line.number * 3 + 100 }));
    const numbers = [...readAlone(parser, lines).understood].map((number) => number * 3 + 100);
    expect([...readAlone(parser, moved).understood]).toEqual(numbers);
  });
});

describe('a text without end', () => {
  const hostile: readonly (readonly [string, string])[] = [
    ['one letter', 'a'.repeat(1999).concat('\n')],
    ['blanks', ' '.repeat(1999).concat('x\n')],
    ['brackets', '[{"ifindex":1,\n'],
    ['open brackets', '[\n{"dst":[[[[\n'],
    ['dashes', `--- ${'ping '.repeat(380)} ---\n`],
    ['digits', '1 '.repeat(900).concat('\n')],
    ['colons', ': '.repeat(900).concat('\n')],
    ['stars', '* Trying '.repeat(200).concat('\n')],
    ['sequences', '64 '.concat('seq=1 '.repeat(300)).concat('\n')],
    ['servers', 'Server: a\nAddress: 172.23.40.1\n'],
    ['silence', ';; no servers could be reached\n'],
    ['heads', 'Kernel IP routing table of many words more\n'],
  ];

  // Tens of milliseconds for most; on a busy machine more. What grows with the square takes tens of seconds.
  test.each(hostile)('of %s is read in time that grows with it', { timeout: 120_000 }, (_name, text) => {
    for (const parser of UNIX) {
      const lines = plainLines(text.repeat(Math.ceil(300_000 / text.length)));
      const took = Math.round(bestMilliseconds(() => readAlone(parser, lines), 750));
      expect(took >= 750 ? `${parser.name} took ${took} ms` : '').toBe('');
    }
  });

  test('of 5 MB of all samples is read by all parsers within seconds', { timeout: 60_000 }, () => {
    const once = ALL.map((sample) => sample.text).join('\n\n\n\n');
    const text = once.repeat(Math.ceil(5_000_000 / once.length));
    const lines = plainLines(text);
    // 110 to 169 yards were measured, on a free machine and a busy one.
    const readAll = (): void => {
      for (const parser of UNIX) readAlone(parser, lines);
    };
    expect(yardsOf(readAll, 330)).toBeLessThan(330);
  });

  test('is left alone where one line has no end', () => {
    const lines = plainLines(`inet ${'172.23.40.57 '.repeat(400_000)}`);
    for (const parser of UNIX) expect(parser.claims(lines, 0)).toBe(-1);
  });
});

describe('JSON', () => {
  const plain = (value: unknown): unknown => {
    const json = value as {
      kind: string;
      value?: unknown;
      items?: unknown[];
      entries?: Map<string, unknown>;
    };
    if (json.kind === 'list') return (json.items ?? []).map(plain);
    if (json.kind === 'object') {
      return Object.fromEntries([...(json.entries ?? [])].map(([key, it]) => [key, plain(it)]));
    }
    return json.value;
  };

  // `__proto__` as a key is no matter of ours: Object.fromEntries above would keep it, JSON.parse does, too.
  const value = fc.array(fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 4 })), { maxLength: 4 });

  test('is read as JSON.parse reads it, however it is laid out', () => {
    fc.assert(
      fc.property(value, fc.constantFrom(undefined, 1, 4), (given, indent) => {
        const text = JSON.stringify(given, undefined, indent);
        const indented = text.replaceAll('\n[', '\n [');
        const read = readJson(plainLines(indented), 0);
        expect(read === undefined ? undefined : plain(read.value)).toEqual(JSON.parse(text));
      }),
      { numRuns: 1000 },
    );
  });
});
