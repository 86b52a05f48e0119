import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linesOf } from '../../src/intake/clean.js';
import { readPaste } from '../../src/intake/paste.js';
import { showAddress } from '../../src/values/address.js';
import { EVERY_SAMPLE } from './every-sample.js';

const RUNS = Number(process.env.WHYDARK_MUTATIONS ?? 3000);

type Mutation = (text: string, other: string) => string;

const OTHER_ALPHABETS = [
  'камера у ворот',
  '网络摄像机',
  'カメラ',
  'κάμερα',
  'مصراع',
  'กล้อง',
  '\u202e\u200b',
  '\ud800',
  '\u0000',
  '١٧٢.٢٣.٤٠.٥٧',
];

const place = fc.nat({ max: 100_000 });

function at(text: string, wanted: number): number {
  return text === '' ? 0 : wanted % text.length;
}

function lineAt(lines: readonly string[], wanted: number): number {
  return wanted % lines.length;
}

const MUTATION: fc.Arbitrary<Mutation> = fc.oneof(
  fc.tuple(place, place).map(([from, length]): Mutation => {
    return (text) => text.slice(0, at(text, from)) + text.slice(at(text, from) + (length % 200));
  }),
  place.map(
    (end): Mutation =>
      (text) =>
        text.slice(0, at(text, end)),
  ),
  place.map(
    (start): Mutation =>
      (text) =>
        text.slice(at(text, start)),
  ),
  place.map((wanted): Mutation => {
    return (text) => {
      const lines = text.split('\n');
      const index = lineAt(lines, wanted);
      return lines.flatMap((line, here) => (here === index ? [line, line] : [line])).join('\n');
    };
  }),
  fc.tuple(place, place).map(([one, two]): Mutation => {
    return (text) => {
      const lines = text.split('\n');
      const [from, to] = [lineAt(lines, one), lineAt(lines, two)];
      return lines
        .map((line, here) => (here === from ? lines[to] : here === to ? lines[from] : line))
        .join('\n');
    };
  }),
  fc.tuple(place, fc.string({ unit: 'binary', maxLength: 6 })).map(([wanted, put]): Mutation => {
    return (text) => text.slice(0, at(text, wanted)) + put + text.slice(at(text, wanted));
  }),
  fc.tuple(place, fc.constantFrom(...OTHER_ALPHABETS)).map(([wanted, put]): Mutation => {
    return (text) => text.slice(0, at(text, wanted)) + put + text.slice(at(text, wanted));
  }),
  fc
    .tuple(place, fc.constantFrom('1', '.', '255', ':', ' ', '[', '"', '/', '%', '\t', '\r', '172.23.40.'))
    .map(([wanted, put]): Mutation => {
      return (text) => text.slice(0, at(text, wanted)) + put + text.slice(at(text, wanted) + 1);
    }),
  fc.tuple(place, fc.constantFrom('x', '1', ' ', '1.', ':', 'a b ')).map(([wanted, piece]): Mutation => {
    return (text) => text.slice(0, at(text, wanted)) + piece.repeat(700) + text.slice(at(text, wanted));
  }),
  fc.constantFrom<Mutation[]>(
    (text) => text.replaceAll('\n', ''),
    (text) => text.replaceAll(/ {2,}/g, ' '),
    (text) => text.replaceAll('\n', '\r\n'),
    (text) => text.replaceAll('\n', '\n\n'),
    (text) => text.replaceAll(/^/gm, '> '),
    (text) => text.toUpperCase(),
  ),
  place.map((wanted): Mutation => {
    return (text, other) => text.slice(0, at(text, wanted)) + other + text.slice(at(text, wanted));
  }),
);

const SAMPLE = fc.constantFrom(...EVERY_SAMPLE.values());

/** The bits of every IPv4 address in a value, however deep. */
function* addressesIn(value: unknown): Generator<number> {
  if (typeof value !== 'object' || value === null) return;
  if ('kind' in value && value.kind === 'ipv4' && 'bits' in value) yield Number(value.bits);
  else for (const each of Object.values(value)) yield* addressesIn(each);
}

/** The four numbers next to each other in a text, with a dot, a comma or blanks between, as people type them. */
function standsIn(text: string, bits: number): boolean {
  const numbers = showAddress({ kind: 'ipv4', bits }).split('.');
  const shown = numbers.map((number) => `0{0,2}${number}`).join(' *[., ] *');
  if (new RegExp(`(?<!\\d)${shown}(?!\\d)`).test(text)) return true;
  // The BSDs leave noughts at the end of a route out.
  const cut = numbers.slice(0, Math.max(1, numbers.findLastIndex((number) => number !== '0') + 1)).join('.');
  return bits === 0 || (numbers.at(-1) === '0' && text.includes(cut));
}

test(`nothing throws in ${RUNS} mutated samples, and every address stands in the cleaned text`, () => {
  fc.assert(
    fc.property(SAMPLE, SAMPLE, fc.array(MUTATION, { minLength: 1, maxLength: 5 }), (sample, other, all) => {
      const text = all.reduce((mutated, mutate) => mutate(mutated, other), sample);
      const paste = readPaste(text);
      const lines = linesOf(paste.text).map((line) => line.text);
      const cleaned = lines.join('\n');
      // A console pushes the end of an address on to the next line.
      const joined = lines.join('');
      for (const bits of addressesIn(paste.reading.seen)) {
        if (!standsIn(cleaned, bits) && !standsIn(joined, bits))
          expect.fail(`${showAddress({ kind: 'ipv4', bits })} is not in ${JSON.stringify(cleaned)}`);
      }
      const numbers = new Set(paste.reading.unread.map((line) => line.number));
      expect(numbers.size).toBe(paste.reading.unread.length);
    }),
    { numRuns: RUNS },
  );
}, 7_200_000);
