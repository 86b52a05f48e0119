import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inWords } from '../../../src/messages/say.js';
import {
  CURRENT,
  type Dimension,
  EXTRA_LOW_VOLTAGE,
  LENGTH,
  POWER,
  TEMPERATURE,
} from '../../../src/values/units/dimension.js';
import { parseRange } from '../../../src/values/units/parse-range.js';

/** Both ends, or the id of the problem. */
function read(text: string, dimension: Dimension<number>): readonly [number, number] | string {
  const parsed = parseRange(text, dimension);
  return parsed.ok ? [parsed.value.least, parsed.value.most] : parsed.problem.id;
}

type Row = readonly [text: string, dimension: Dimension<number>, least: number, most: number];

describe('a typed measure', () => {
  test.each<Row>([
    // One value. The international foot is 0.3048 m (NIST Handbook 44, appendix C).
    ['100m', LENGTH, 100, 100],
    ['100', LENGTH, 100, 100],
    ['330 ft', LENGTH, 100.584, 100.584],
    ["330'", LENGTH, 100.584, 100.584],
    ['0.1 km', LENGTH, 100, 100],
    ['0,5 A', CURRENT, 0.5, 0.5],
    ['500 mA', CURRENT, 0.5, 0.5],
    ['350mA', CURRENT, 0.35, 0.35],
    ['48 V', EXTRA_LOW_VOLTAGE, 48, 48],
    ['12VDC', EXTRA_LOW_VOLTAGE, 12, 12],
    ['12.95 W', POWER, 12.95, 12.95],
    ['12,95 watts', POWER, 12.95, 12.95],
    ['-20 °C', TEMPERATURE, -20, -20],
    ['68 F', TEMPERATURE, 20, 20],
    ['-40 F', TEMPERATURE, -40, -40],
    // Two values.
    ['60-90 m', LENGTH, 60, 90],
    ['60 – 90m', LENGTH, 60, 90],
    ['60 to 90 m', LENGTH, 60, 90],
    ['between 60 and 90 metres', LENGTH, 60, 90],
    ['60..90 m', LENGTH, 60, 90],
    ['60 m - 90 m', LENGTH, 60, 90],
    ['90-60 m', LENGTH, 60, 90],
    ['200-300 ft', LENGTH, 60.96, 91.44],
    ['50 cm to 2 m', LENGTH, 0.5, 2],
    ['0,3-0,5 A', CURRENT, 0.3, 0.5],
    ['300 mA to 0.5 A', CURRENT, 0.3, 0.5],
    ['-10 to 40 °C', TEMPERATURE, -10, 40],
    ['-20--10 °C', TEMPERATURE, -20, -10],
    // Give or take, and one end.
    ['80 ± 5 m', LENGTH, 75, 85],
    ['80 +/- 5 m', LENGTH, 75, 85],
    ['5 ± 10 m', LENGTH, 0.1, 15],
    ['up to 90 m', LENGTH, 0.1, 90],
    ['< 90 m', LENGTH, 0.1, 90],
    ['over 60 m', LENGTH, 60, 2000],
  ])('%j is understood', (text, dimension, least, most) => {
    expect(read(text, dimension)).toEqual([least, most]);
  });

  test.each<readonly [string, Dimension<number>, string]>([
    ['', LENGTH, 'typed.empty'],
    ['far', LENGTH, 'typed.number-unclear'],
    ['about 80 m', LENGTH, 'measure.about'],
    ['~80 m', LENGTH, 'measure.about'],
    ['80 m or so', LENGTH, 'measure.about'],
    ['30 V', LENGTH, 'typed.unit-other'],
    ['60 V - 90 m', LENGTH, 'typed.unit-other'],
    ['12 W', EXTRA_LOW_VOLTAGE, 'typed.unit-other'],
    ['230 V', EXTRA_LOW_VOLTAGE, 'typed.number-outside'],
    ['0 m', LENGTH, 'typed.number-outside'],
    ['-5 m', LENGTH, 'typed.number-outside'],
    ['60-9000 m', LENGTH, 'typed.number-outside'],
    ['1-2-3 m', LENGTH, 'typed.number-unclear'],
    ['500 A', CURRENT, 'typed.number-outside'],
    ['1,250 m', LENGTH, 'typed.number-two-readings'],
  ])('%j is refused', (text, dimension, id) => {
    expect(read(text, dimension)).toBe(id);
  });

  test.each<readonly [string, Dimension<number>, string]>([
    ['230 V', EXTRA_LOW_VOLTAGE, 'Type a number in V from 1 to 60.'],
    ['9000 ft', LENGTH, 'Type a number in ft from 0.33 to 6561.67.'],
    ['50000 mA', CURRENT, 'Type a number in mA from 1 to 40000.'],
  ])('%j is refused with the range in the unit that was typed', (text, dimension, words) => {
    const parsed = parseRange(text, dimension);
    expect(parsed.ok ? '' : inWords(parsed.problem)).toContain(words);
  });
});

describe('a typed measure, for any text', () => {
  const number = fc.integer({ min: 1, max: 1999 }).map((value) => value / 2);
  const separator = fc.constantFrom('-', ' - ', ' to ', '–', '..', ' and ');

  test('two numbers in either order, with one unit or two, are the range between them', () => {
    fc.assert(
      fc.property(number, number, separator, fc.boolean(), (one, other, between, twice) => {
        const text = `${one}${twice ? ' m' : ''}${between}${other} m`;
        expect(read(text, LENGTH)).toEqual([Math.min(one, other), Math.max(one, other)]);
      }),
    );
  });

  test('never throws, never leaves its range, and never turns the ends round', () => {
    const piece = fc.constantFrom(
      '1',
      '24',
      '.',
      ',',
      ' ',
      '-',
      '±',
      ' to ',
      'm',
      'ft',
      'V',
      '<',
      'about ',
      '…',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece).map((it) => it.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const parsed = parseRange(typed, LENGTH);
        if (!parsed.ok) {
          expect(inWords(parsed.problem)).not.toMatch(/undefined|NaN/);
          return;
        }
        const { least, most } = parsed.value;
        expect(least >= 0.09 && least <= most && most <= 2000).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });
});
