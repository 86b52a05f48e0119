import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linesOf } from '../../src/intake/clean.js';
import { yardsOf } from '../timing/yards.js';

/** The lines with their numbers, as `1: text`. */
function read(text: string): readonly string[] {
  return linesOf(text).map((line) => `${line.number}: ${line.text}`);
}

function one(text: string): string | undefined {
  const lines = linesOf(text);
  return lines.length === 1 ? lines[0]?.text : undefined;
}

describe('line ends', () => {
  test.each(['\n', '\r\n', '\r', '\u2028', '\u2029', '\r\r\n'])('%j ends one', (end) => {
    expect(read(`a${end}${end}b${end}`)).toEqual(['1: a', '2: ', '3: b', '4: ']);
  });

  test('CR and LF count as one also where kinds are mixed', () => {
    expect(read('a\r\nb\rc\n\rd')).toEqual(['1: a', '2: b', '3: c', '4: ', '5: d']);
  });
});

describe('characters', () => {
  test.each([
    ['IPv4\u00a0Address', 'IPv4 Address'],
    ['172.23.\u200b40.57\u200e', '172.23.40.57'],
    ['\ufeffWindows IP', 'Windows IP'],
    ['Sub\u00adnet', 'Subnet'],
    ['a\u2009b\u202fc\u3000d', 'a b c d'],
    ['“a” ‘b’', '"a" \'b\''],
    ['１７２．２３．４０．５７', '172.23.40.57'],
    ['172。23。40。57', '172.23.40.57'],
    ['完了。次', '完了。次'],
    ['子网掩码：２４', '子网掩码:24'],
    ['IPv4 Address… : 172.23.40.57', 'IPv4 Address... : 172.23.40.57'],
    ['02‐00–5E−00‑53—01', '02-00-5E-00-53-01'],
    ['a – b', 'a – b'],
    ['\u001b[01;32minet\u001b[0m 172.23.40.57', 'inet 172.23.40.57'],
    ['bell\u0007', 'bell'],
    ['Gro\u0308\u00dfe', 'Größe'],
    ['GrÃ¶ÃŸe', 'Größe'],
    ['trailing \u00a0\t', 'trailing'],
    ['   leading', '   leading'],
  ])('%j is %j', (text, expected) => {
    expect(one(text)).toBe(expected);
  });

  test.each([
    ['\tether 02:00:5e:00:53:01', '        ether 02:00:5e:00:53:01'],
    ['ab\tc', 'ab      c'],
    ['abcdefgh\tc', 'abcdefgh        c'],
    ['a\tb\tc', 'a       b       c'],
  ])('tabs lead to the next stop: %j', (text, expected) => {
    expect(one(text)).toBe(expected);
  });
});

describe('what mail and chat put around a text', () => {
  test.each([
    ['> ping', 'ping'],
    ['>> ping', 'ping'],
    ['> > ping', 'ping'],
    ['>   inet', '  inet'],
    ['>', ''],
    ['| ping', 'ping'],
    ['|-- 172.23.40.1', '|-- 172.23.40.1'],
    ['  1.|-- 172.23.40.1', '  1.|-- 172.23.40.1'],
    ['C:\\>ping', 'C:\\>ping'],
    ['--- Original message ---', '--- Original message ---'],
    ['```', ''],
    ['```text', ''],
    ['~~~', ''],
    ['> ```', ''],
    ['``a``', '``a``'],
  ])('%j is %j', (text, expected) => {
    expect(one(text)).toBe(expected);
  });
});

describe('a value that was wrapped', () => {
  const leader = '   IPv4 Address. . . . . . . . . . . :';

  test('goes back behind its dotted leader and leaves a gap in the numbers', () => {
    expect(read(`a\n${leader}\n      172.23.40.57(Preferred)\nb`)).toEqual([
      '1: a',
      `2: ${leader} 172.23.40.57(Preferred)`,
      '4: b',
    ]);
    expect(read(`> ${leader}\n> 255.255.255.0`)).toEqual([`1: ${leader} 255.255.255.0`]);
    expect(read(`${leader}\n  02-00-5E-00-53-01`)).toEqual([`1: ${leader} 02-00-5E-00-53-01`]);
    expect(read(`${leader}\n  fe80::1%12`)).toEqual([`1: ${leader} fe80::1%12`]);
  });

  test.each([
    `${leader}\n\n172.23.40.57`,
    `${leader} 172.23.40.57\n   172.23.40.58`,
    `${leader}\n   Subnet Mask . . . . . : 255.255.255.0`,
    `${leader}\nEthernet`,
    `${leader}\n   No`,
    'Servers:\n   172.23.40.57',
    `${leader}\n   172.23.40.57 172.23.40.58`,
  ])('stays where that is not sure: %j', (text) => {
    expect(linesOf(text).map((line) => line.text)).toEqual(text.split('\n'));
  });

  test('takes one value only', () => {
    expect(read(`${leader}\n  172.23.40.57\n  172.23.40.58`)).toEqual([
      `1: ${leader} 172.23.40.57`,
      '3:   172.23.40.58',
    ]);
  });
});

test('numbers rise and lie in the text, no line has an end in it, whatever comes', () => {
  const piece = fc.oneof(
    fc.constantFrom('\r', '\n', '\t', '> ', '| ', '```', ' . . . :', '  172.23.40.57', '\u2028', 'â€¨', 'Ã'),
    fc.string({ unit: 'binary' }),
  );
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      const text = pieces.join('');
      const lines = linesOf(text);
      const count = text.split(/\r{0,2}\n|[\r\u2028\u2029]/).length;
      expect(lines.every(({ text: line }) => !/[\r\n\u2028\u2029\t]|\s$/.test(line))).toBe(true);
      let last = 0;
      for (const { number } of lines) {
        expect(number).toBeGreaterThan(last);
        last = number;
      }
      expect(last).toBeLessThanOrEqual(count);
    }),
  );
});

test.each([
  ['what Windows prints', '   IPv4-Adresse  . . . . . . . . . . : 172.23.40.57(Bevorzugt)\r\n'],
  ['accents', 'Passerelle par défaut\u00a0: é\tü\n'],
  ['mojibake', 'GrÃ¶ÃŸe '],
  ['line ends', '\r'],
  ['two CRs', '\r\r\r'],
  ['quoting', '> '],
  ['tabs', '\t'],
  ['dots', '. '],
  ['leaders', ' . . . :\n'],
  ['escapes', '\u001b[0;'],
])('five megabytes of %s take no longer than they should', (_, piece) => {
  const text = piece.repeat(Math.ceil(5_000_000 / piece.length));
  expect(yardsOf(() => linesOf(text), 300)).toBeLessThan(300);
});
