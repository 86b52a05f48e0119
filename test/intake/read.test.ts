import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Line, Parser, Taken } from '../../src/intake/parser.js';
import { read } from '../../src/intake/read.js';
import { NOTHING_SEEN, type Seen } from '../../src/intake/seen.js';

interface Log {
  claims: number;
  looked: number;
}

/** Begins at a line `name` and takes it and the lines after it that begin with `+`. */
function block(name: string, log: Log = { claims: 0, looked: 0 }, readsLeftovers?: boolean): Parser {
  return {
    name,
    source: 'made up',
    ...(readsLeftovers === undefined ? {} : { readsLeftovers }),
    claims: (lines, from) => {
      log.claims += 1;
      for (let at = from; at < lines.length; at++) {
        log.looked += 1;
        if (lines[at]?.text.startsWith(name)) return at;
      }
      return -1;
    },
    take: (lines, from) => {
      const end = lines.findIndex((line, at) => at > from && !line.text.startsWith('+'));
      return taken(name, lines.slice(from, end === -1 ? lines.length : end));
    },
  };
}

function taken(name: string, lines: readonly Line[]): Taken {
  const pings = lines.map((line) => ({
    target: `${name} ${line.text}`,
    sent: 1,
    received: 1,
    troubles: [],
    hasDuplicates: false,
    line: line.number,
  }));
  return { seen: { pings }, lines: new Set(lines.map((line) => line.number)) };
}

function told(seen: Seen): readonly string[] {
  return seen.pings.map((ping) => `${ping.line} ${ping.target}`);
}

describe('reading', () => {
  test('gives each parser its lines, and the others back', () => {
    const { seen, unread, parsers } = read('hello\na\n+1\n\nb\n+2\n+3\nso long\na', [block('a'), block('b')]);
    expect(told(seen)).toEqual(['2 a a', '3 a +1', '5 b b', '6 b +2', '7 b +3', '9 a a']);
    expect(unread).toEqual([
      { number: 1, text: 'hello' },
      { number: 8, text: 'so long' },
    ]);
    expect(parsers).toEqual([
      { name: 'a', from: 2, to: 3 },
      { name: 'b', from: 5, to: 7 },
      { name: 'a', from: 9, to: 9 },
    ]);
  });

  test('lets the earlier claim win, whatever the order', () => {
    expect(read('b\na', [block('a'), block('b')]).parsers.map((used) => used.name)).toEqual(['b', 'a']);
  });

  test('lets the first in the list win where both claim a line', () => {
    const parsers = [block('ab'), block('a')];
    expect(read('abc\nac', parsers).parsers.map((used) => used.name)).toEqual(['ab', 'a']);
    expect(read('abc', [...parsers].reverse()).parsers.map((used) => used.name)).toEqual(['a']);
  });

  test('passes over claims within what another took', () => {
    const all: Parser = { ...block('a'), take: (lines, from) => taken('a', lines.slice(from, from + 3)) };
    expect(told(read('a\nb\nc\nb', [all, block('b')]).seen)).toEqual(['1 a a', '2 a b', '3 a c', '4 b b']);
  });

  test('goes on behind a parser that claims and takes nothing', () => {
    const none: Parser = { ...block('a'), take: () => ({ seen: {}, lines: new Set() }) };
    const { parsers, unread } = read('a\na\nb', [none, block('b')]);
    expect(parsers).toEqual([{ name: 'b', from: 3, to: 3 }]);
    expect(unread.map((line) => line.number)).toEqual([1, 2]);
  });

  test('lines within that were not understood stay unread', () => {
    const gaps: Parser = {
      ...block('a'),
      take: (lines, from) =>
        taken(
          'a',
          [lines[from], lines[from + 2]].filter((line) => line !== undefined),
        ),
    };
    const { unread, parsers } = read('a\n?\nb', [gaps, block('b')]);
    expect(unread).toEqual([{ number: 2, text: '?' }]);
    expect(parsers).toEqual([{ name: 'a', from: 1, to: 3 }]);
  });

  test('numbers are those of the text as it came', () => {
    const text = '> x\n> Address. . . . :\n> 172.23.40.57\n> a';
    expect(read(text, [block('a')]).parsers).toEqual([{ name: 'a', from: 4, to: 4 }]);
  });
});

describe('a parser of leftovers', () => {
  test('sees only what the others left, though it claims earlier and stands first', () => {
    const greedy: Parser = {
      ...block('', undefined, true),
      claims: (lines, from) => lines.findIndex((line, at) => at >= from && line.text !== ''),
      take: (lines, from) => taken('rest', lines.slice(from, from + 1)),
    };
    const { seen, unread } = read('x\na\n+1\ny', [greedy, block('a')]);
    expect(told(seen)).toEqual(['1 rest x', '2 a a', '3 a +1', '4 rest y']);
    expect(unread).toEqual([]);
  });
});

test('nothing is seen in nothing', () => {
  expect(read('', [block('a')])).toEqual({ seen: NOTHING_SEEN, unread: [], parsers: [] });
  expect(read('a', [])).toEqual({ seen: NOTHING_SEEN, unread: [{ number: 1, text: 'a' }], parsers: [] });
});

test('each parser looks at each line about once', () => {
  const logs: readonly Log[] = ['a', 'b', 'never'].map(() => ({ claims: 0, looked: 0 }));
  const parsers = ['a', 'b', 'never'].map((name, place) => block(name, logs[place]));
  const text = 'a\nx\n'.repeat(5000) + 'b\n'.repeat(5000);
  read(text, parsers);
  for (const log of logs) expect(log.looked).toBeLessThanOrEqual(15_001);
  expect(logs[2]?.claims).toBe(1);
});

test('every line that is not blank is understood or unread, never both', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('a', 'b', '+', 'x', '', 'ab')), (pieces) => {
      const { seen, unread } = read(pieces.join('\n'), [block('ab'), block('a'), block('b')]);
      const lines = [...seen.pings.map((ping) => ping.line), ...unread.map((line) => line.number)];
      const wanted = pieces.flatMap((piece, place) => (piece === '' ? [] : [place + 1]));
      expect(lines.sort((one, other) => one - other)).toEqual(wanted);
    }),
  );
});

test('a parser of leftovers sees each stretch by itself, and nothing from within an output', () => {
  const stretches: string[] = [];
  const rest: Parser = {
    ...block('', undefined, true),
    claims: (lines) => {
      stretches.push(lines.map((line) => line.text).join('|'));
      return -1;
    },
  };
  const gaps: Parser = {
    ...block('a'),
    take: (lines, from) =>
      taken(
        'a',
        [lines[from], lines[from + 2]].filter((line) => line !== undefined),
      ),
  };
  read('x\ny\na\n?\n+\nz\n\na\n?\n+', [gaps, rest]);
  expect(stretches).toEqual(['x|y', 'z|']);
});
