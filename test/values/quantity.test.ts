import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inWords, type MessageId } from '../../src/messages/say.js';
import { parseNumber, typedUnit } from '../../src/values/quantity.js';

/** Typed text, unit, what is expected, and the range where it is not the usual one. */
type Row<T> = [text: string, unit: string, expected: T, min?: number, max?: number];

/** The number, or the id of the problem. */
function read(text: string, unit: string, min = 0, max = 1000): number | string {
  const parsed = parseNumber(text, unit, min, max);
  return parsed.ok ? parsed.value : parsed.problem.id;
}

function complaint(text: string, unit: string, min = 0, max = 1000): string {
  const parsed = parseNumber(text, unit, min, max);
  return parsed.ok ? 'no complaint' : inWords(parsed.problem);
}

describe('a typed number', () => {
  test.each<Row<number>>([
    // typed            unit      number
    ['0,5', 'm', 0.5],
    ['0.5', 'm', 0.5],
    ['.5', 'm', 0.5],
    ['100 m', 'm', 100],
    ['100m', 'm', 100],
    ['100 metres.', 'm', 100],
    ['100', 'm', 100],
    ['4 Mbps', 'Mbit/s', 4],
    ['4 Mbit/s', 'Mbps', 4],
    ['4 mb/s', 'Mbit/s', 4],
    ['12,95 W', 'W', 12.95],
    ['12.95 watts', 'W', 12.95],
    ['48v', 'V', 48],
    ['350 mA', 'mA', 350],
    ['9.38 Ω', 'ohm', 9.38],
    ['15 %', '%', 15],
    ['12 fps', 'fps', 12],
    ['24', '', 24],
    ['007', '', 7],
    ['＋１２', '', 12],
    ['"30 m"', 'm', 30],
    ['“30”', 'm', 30],
    ["30'", 'ft', 30],
    ['5 wobbles', 'wobbles', 5],
    ['5 Wobbles', 'wobbles', 5],
    ['\u00a0100\u00a0m\u200b', 'm', 100],
    ['2.525', 'm', 2.525, 0, 10],
    ['0.125', 'm', 0.125],
    ['2.5250', 'm', 2.525, 0, 10000],
    ['-67 dBm', 'dBm', -67, -120, 0],
    ['−67', 'dBm', -67, -120, 0],
    ['–67', 'dBm', -67, -120, 0],
    ['1 000', 'm', 1000],
    ['1,234.5', 'm', 1234.5, 0, 10000],
    ['1.234,5', 'm', 1234.5, 0, 10000],
    ['1,000,000', '', 1000000, 0, 1e9],
    ['1,500', 'kbit/s', 1500, 64, 10000],
    ['-0', '', 0],
  ])('%j in %j is %d', (text, unit, number, min = 0, max = 1000) => {
    expect(read(text, unit, min, max)).toBe(number);
  });

  test.each<Row<MessageId>>([
    ['', 'm', 'typed.empty'],
    ['   ', 'm', 'typed.empty'],
    ['many', 'm', 'typed.number-unclear'],
    ['many', '', 'typed.number-unclear-plain'],
    ['about 30', 'm', 'typed.number-unclear'],
    ['50-60', 'm', 'typed.number-unclear'],
    ['50 – 60 m', 'm', 'typed.number-unclear'],
    ['10/2', 'm', 'typed.number-unclear'],
    ['10 20', 'm', 'typed.number-unclear'],
    ['1.2.3', 'm', 'typed.number-unclear'],
    ['1,00,000', 'm', 'typed.number-unclear'],
    ['30 ft', 'm', 'typed.unit-other'],
    ["30'", 'm', 'typed.unit-other'],
    ['30"', 'm', 'typed.unit-other'],
    ['4 MB/s', 'Mbit/s', 'typed.unit-other'],
    ['4 MBps', 'Mbps', 'typed.unit-other'],
    ['350 mA', 'A', 'typed.unit-other'],
    ['5e3', 'm', 'typed.unit-other'],
    ['30 m', '', 'typed.unit-needless'],
    ['10001', 'm', 'typed.number-outside'],
    ['-1', 'm', 'typed.number-outside'],
    ['10001', '', 'typed.number-outside-plain'],
    ['9'.repeat(150), 'm', 'typed.number-outside'],
    ['1,000', 'm', 'typed.number-two-readings'],
    ['2.525', 'm', 'typed.number-outside', 5000, 9000],
  ])('%j in %j is refused: %s', (text, unit, id, min = 0, max = 10000) => {
    expect(read(text, unit, min, max)).toBe(id);
  });

  test('is allowed at both ends of its range', () => {
    expect(read('1', 'm', 1, 100)).toBe(1);
    expect(read('100', 'm', 1, 100)).toBe(100);
    expect(read('100.1', 'm', 1, 100)).toBe('typed.number-outside');
    expect(read('0.99', 'm', 1, 100)).toBe('typed.number-outside');
  });

  test.each([
    ['101 m', '"101 m" is outside what can be right here. Type a number in m from 1 to 100.'],
    ['30 ft', '"30 ft" ends in ft, but the unit here is m. Type the number in m.'],
    ['far', '"far" cannot be read as one number. Type one number in m, from 1 to 100.'],
  ])('says what was wrong with %s, naming range or units', (text, sentence) => {
    expect(complaint(text, 'm', 1, 100)).toBe(sentence);
  });

  test.each(['1,000', '1.000', '2.525', '1,250', '999.999'])(
    'read in two ways, %s, offers two texts that are each read in one',
    (text) => {
      const parsed = parseNumber(text, 'm', 0, 1e6);
      if (parsed.ok) throw new Error('read without asking');
      const { whole, small } = parsed.problem.with ?? {};
      expect(read(String(whole), 'm', 0, 1e6)).toBe(Number(text.replace(/[.,]/, '')));
      expect(read(String(small), 'm', 0, 1e6)).toBe(Number(text.replace(',', '.')));
    },
  );
});

describe('the unit that was typed', () => {
  test.each([
    ['100 m', 'm'],
    ['100m', 'm'],
    ['"30 m"', 'm'],
    ["30'", "'"],
    ['0.75 mm2', 'mm2'],
    ['-20 °C', '°C'],
    ['100', ''],
    ['far', ''],
    ['', ''],
  ])('after %j is %j', (text, unit) => {
    expect(typedUnit(text)).toBe(unit);
  });
});

describe('a typed number, for any text', () => {
  test('is what JavaScript reads, with a point or a comma, with its unit or without', () => {
    const number = fc.tuple(
      fc.integer({ min: 0, max: 99999 }),
      fc.constantFrom('', '.5', '.25', '.1250', '.0625'),
    );
    fc.assert(
      fc.property(
        number,
        fc.constantFrom('.', ','),
        fc.constantFrom('', ' m', 'm'),
        ([whole, rest], point, unit) => {
          expect(read(`${whole}${rest.replace('.', point)}${unit}`, 'm', 0, 1e6)).toBe(
            Number(`${whole}${rest}`),
          );
        },
      ),
      { numRuns: 3_000 },
    );
  });

  test('never throws and never leaves its range', () => {
    const piece = fc.constantFrom('1', '23', '456', '.', ',', ' ', '-', 'm', '"', "'", '\u200b', '%');
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.array(piece).map((it) => it.join('')),
        ),
        (text) => {
          const parsed = parseNumber(text, 'm', 5, 500);
          const value = parsed.ok ? parsed.value : 5;
          expect(value >= 5 && value <= 500).toBe(true);
          if (!parsed.ok) expect(inWords(parsed.problem)).not.toMatch(/\p{Cc}|\p{Cf}|\p{Cs}/u);
        },
      ),
      { numRuns: 5_000 },
    );
  });
});
