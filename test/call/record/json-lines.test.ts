import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonLines } from '../../../src/call/record/json-lines.js';

const bytes = (text: string) => new TextEncoder().encode(text);

test('gives back the values that were written, and where each line ends', () => {
  fc.assert(
    fc.property(fc.array(fc.jsonValue()), (values) => {
      const lines = values.map((value) => `${JSON.stringify(value)}\n`);
      const read = [...jsonLines(bytes(lines.join('')))];
      expect(read.map((line) => JSON.stringify(line.value))).toEqual(
        values.map((value) => JSON.stringify(value)),
      );
      expect(read.every((line) => line.ended)).toBe(true);
      expect(read.map((line) => line.end)).toEqual(
        lines.map((_, index) => bytes(lines.slice(0, index + 1).join('')).length),
      );
    }),
  );
});

test('tells a line without its newline, a line that is no JSON, and a line that is no UTF-8', () => {
  const read = [...jsonLines(Uint8Array.from([...bytes('{"a":\n"'), 0xc3, ...bytes('"\n7')]))];
  expect(read).toEqual([
    { value: undefined, ended: true, end: 6 },
    { value: undefined, ended: true, end: 10 },
    { value: 7, ended: false, end: 11 },
  ]);
});
