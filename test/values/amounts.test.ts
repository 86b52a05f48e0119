import { describe, expect, test } from 'vitest';
import { parseBitRate, showBitRate, showBitRates } from '../../src/values/bit-rate.js';
import { parseCapacity, parseWritten, showBytes, showGibibytes } from '../../src/values/byte-size.js';
import { parseDays, parseHoursADay, parseMilliseconds, parseWindow } from '../../src/values/duration.js';
import { parseCount } from '../../src/values/measure.js';
import { parseShare, showShares } from '../../src/values/share.js';
import { publishedRow } from '../arithmetic/network-references.js';
import { accepted, refusal } from './accepted.js';

describe('a bit rate as typed', () => {
  test.each([
    ['4 Mbps', 4e6],
    ['4 Mbit/s', 4e6],
    ['4Mb/s', 4e6],
    ['4 mb', 4e6],
    ['4M', 4e6],
    ['10 meg', 10e6],
    ['512 kbps', 512e3],
    ['512kbit/s', 512e3],
    ['512 kb', 512e3],
    ['0,5 Mbit/s', 0.5e6],
    ['1 Gbit/s', 1e9],
    ['2 MB/s', 16e6],
    ['0', 0],
  ])('%s is %d bit/s', (text, expected) => {
    expect(accepted(parseBitRate(text))).toBeCloseTo(expected, 3);
  });

  test.each(['4 MB', '512 KB', '512kB'])('%s may be bytes and is refused, naming both', (text) => {
    expect(refusal(parseBitRate(text))).toMatch(/kbit\/s.*MB\/s/);
  });

  test('a bare number is refused for its unit', () => {
    expect(refusal(parseBitRate('4'))).toContain('unit');
  });

  test('a unit of another kind is named', () => {
    expect(refusal(parseBitRate('4 metres'))).toContain('metres');
  });

  test.each(['-2 Mbit/s', '50 Gbit/s', '1e9 Mbit/s'])('%s is refused', (text) => {
    expect(parseBitRate(text).ok).toBe(false);
  });

  test('what is out of range is told the range in the unit that was typed', () => {
    expect(refusal(parseBitRate('50 Gbit/s'))).toContain('Gbit/s from 0 to 10');
  });

  test('is shown in the unit of its size, a range in one unit', () => {
    expect(showBitRate(512e3)).toBe('512 kbit/s');
    expect(showBitRates({ low: 0.5e6, high: 4e6 })).toBe('0.5–4 Mbit/s');
    expect(showBitRate(1e9)).toBe('1 Gbit/s');
  });
});

describe('a capacity as typed', () => {
  test.each([
    ['128 GB', 128e9],
    ['128GB', 128e9],
    ['128', 128e9],
    ['128 Gb', 128e9],
    ['128 gig', 128e9],
    ['1 TB', 1e12],
    ['1,5 TB', 1.5e12],
  ])('%s is %d bytes', (text, expected) => {
    expect(accepted(parseCapacity(text))).toBeCloseTo(expected, 0);
  });

  // IEC 60027-2 / 80000-13.
  test('counts binary units as published', () => {
    const row = publishedRow<{ GiB: number; GB: number; ex: Record<string, number> }>('f-gib');
    expect(accepted(parseCapacity('1 GiB'))).toBe(row.GiB);
    expect(accepted(parseCapacity('1 GB'))).toBe(row.GB);
    for (const [text, gibibytes] of Object.entries(row.ex)) {
      expect(accepted(parseCapacity(text)) / row.GiB).toBeCloseTo(gibibytes, 3);
      expect(showGibibytes(accepted(parseCapacity(text)))).toBe(`${Number(gibibytes.toPrecision(4))} GiB`);
    }
  });

  test.each(['0 GB', '200 TB', '-4 GB'])('%s is refused', (text) => {
    expect(parseCapacity(text).ok).toBe(false);
  });

  test('an amount of writing is in terabytes where no unit is typed', () => {
    expect(accepted(parseWritten('64'))).toBe(64e12);
    expect(accepted(parseWritten('500 GB'))).toBe(500e9);
  });

  test('is shown in the unit of its size', () => {
    expect(showBytes({ low: 5184e9, high: 5184e9 })).toBe('5.184 TB');
    expect(showBytes({ low: 21.6e9, high: 43.2e9 })).toBe('21.6–43.2 GB');
    expect(showBytes({ low: 9e6, high: 9e6 })).toBe('9 MB');
  });
});

describe('a share as typed', () => {
  test.each([
    ['20 %', 0.2],
    ['20', 0.2],
    ['0,5 %', 0.005],
    ['12.5 per cent', 0.125],
    ['0', 0],
    ['1', 0.01],
  ])('%s is %d', (text, expected) => {
    expect(accepted(parseShare(text, 0, 1))).toBeCloseTo(expected, 9);
  });

  test('a bare part of one is refused, with both readings', () => {
    expect(refusal(parseShare('0.2', 0, 1))).toMatch(/20 %.*0\.2 %/);
    expect(refusal(parseShare('0,2', 0, 1))).toMatch(/20 %.*0\.2 %/);
  });

  test('more than the whole is refused, naming the range', () => {
    expect(refusal(parseShare('120 %', 0, 1))).toContain('100');
  });

  test('a range is shown in per cent', () => {
    expect(showShares({ low: 0.03, high: 0.1 })).toBe('3–10 %');
  });
});

describe('a duration as typed', () => {
  test.each([
    [parseHoursADay, '8 h', 8],
    [parseHoursADay, '8', 8],
    [parseHoursADay, '8 hours a day', 8],
    [parseHoursADay, '30 min', 0.5],
    [parseHoursADay, '24/7', 24],
    [parseHoursADay, 'always', 24],
    [parseDays, '14', 14],
    [parseDays, '2 weeks', 14],
    [parseDays, '12 h', 0.5],
    [parseMilliseconds, '45', 45],
    [parseMilliseconds, '1,5 ms', 1.5],
    [parseMilliseconds, '2 s', 2000],
    [parseWindow, '5', 300],
    [parseWindow, '90 s', 90],
  ])('%o reads %s', (parse, text, expected) => {
    expect(accepted(parse(text))).toBeCloseTo(expected, 9);
  });

  test('a day has no more than 24 hours', () => {
    expect(refusal(parseHoursADay('25 h'))).toContain('24');
  });
});

describe('a count as typed', () => {
  test('is a whole number in its range', () => {
    expect(accepted(parseCount('3', 1, 10))).toBe(3);
    expect(refusal(parseCount('2.5', 1, 10))).toContain('whole');
    expect(refusal(parseCount('11', 1, 10))).toContain('1 to 10');
  });
});
