import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAfter1970, daysSince1970, isDay } from '../../src/values/calendar.js';
import { parseMoment, showInUtc, showMoment, showRead } from '../../src/values/moment.js';
import { parseZone } from '../../src/values/zone.js';
import { accepted, refusal } from './accepted.js';

const NOON = Date.UTC(2026, 10, 25, 14, 30) / 1000;

describe('a date and time as typed', () => {
  test.each([
    ['2026-11-25 14:30', NOON, 60],
    ['2026-11-25T14:30', NOON, 60],
    ['2026-11-25 14:30:05', NOON + 5, 1],
    ['2026-11-25 14:30:05.250', NOON + 5, 1],
    ['2026/11/25 14:30', NOON, 60],
    ['25.11.2026 14:30', NOON, 60],
    ['25/11/2026 14:30', NOON, 60],
    ['11/25/2026 14:30', NOON, 60],
    ['25 Nov 2026 14:30', NOON, 60],
    ['25 November 2026, 14:30', NOON, 60],
    ['Wed 25 Nov 2026 2:30 pm', NOON, 60],
    ['Nov 25, 2026 2:30pm', NOON, 60],
    ['2026-11-25', NOON - 14.5 * 3600, 86_400],
    ['2026-11-25 12:05 am', NOON - 14.5 * 3600 + 300, 60],
  ])('%s', (text, seconds, within) => {
    expect(accepted(parseMoment(text))).toEqual({ kind: 'moment', seconds, within });
  });

  test.each([
    ['2026-11-25T14:30Z', 0],
    ['2026-11-25T14:30+02:00', 120],
    ['2026-11-25 14:30 -0530', -330],
    ['2026-11-25 14:30 UTC', 0],
    ['2026-11-25 14:30 UTC+2', 120],
    ['Nov 25 14:30:00 2026 GMT', 0],
  ])('%s has its zone', (text, zoneMinutes) => {
    expect(accepted(parseMoment(text))).toMatchObject({ seconds: NOON, zoneMinutes });
  });

  test('a date that can be read in two ways is refused with both', () => {
    expect(refusal(parseMoment('3/4/2026 10:00'))).toMatch(/2026-04-03.*2026-03-04/);
    expect(accepted(parseMoment('4/4/2026')).seconds).toBe(Date.UTC(2026, 3, 4) / 1000);
  });

  test.each(['2026-02-30 10:00', '2025-02-29', '2026-13-01', '2026-11-25 24:10', '2026-11-25 13:30 pm'])(
    '%s does not exist',
    (text) => {
      expect(refusal(parseMoment(text))).toContain('does not exist');
    },
  );

  test.each(['yesterday', '14:30', '25 Foo 2026', '', '2026'])('%s is refused', (text) => {
    expect(parseMoment(text).ok).toBe(false);
  });

  test('years outside the range are refused with the range', () => {
    expect(refusal(parseMoment('1969-12-31'))).toMatch(/1970 to 2099/);
    expect(refusal(parseMoment('2100-01-01'))).toMatch(/1970 to 2099/);
  });

  test('is shown as exactly as it was read', () => {
    expect(showRead(accepted(parseMoment('25.11.2026')))).toBe('2026-11-25');
    expect(showRead(accepted(parseMoment('25.11.2026 9:05')))).toBe('2026-11-25 09:05');
    expect(showInUtc(accepted(parseMoment('2026-11-25 00:30 +01:00')))).toBe('2026-11-24 23:30 UTC');
  });

  test('what is shown is read back as the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Date.UTC(2099, 11, 31) / 1000 }), (seconds) => {
        expect(accepted(parseMoment(showMoment(seconds)))).toEqual({ kind: 'moment', seconds, within: 1 });
      }),
    );
  });
});

// The calendar of ECMAScript (ECMA-262, section 21.4.1) as a second opinion.
describe('the calendar', () => {
  test('agrees with that of ECMAScript on every day of 1970 to 2099', () => {
    const last = Date.UTC(2099, 11, 31) / 86_400_000;
    for (let days = 0; days <= last; days += 1) {
      const theirs = new Date(days * 86_400_000);
      const day = {
        year: theirs.getUTCFullYear(),
        month: theirs.getUTCMonth() + 1,
        day: theirs.getUTCDate(),
      };
      if (daysSince1970(day) !== days || !isDay(day)) throw new Error(`${JSON.stringify(day)} went wrong`);
      expect(dayAfter1970(days)).toEqual(day);
    }
  });

  test('has a leap day in 2000 and 2024, not in 2026', () => {
    const leap = [2000, 2024, 2026].map((year) => isDay({ year, month: 2, day: 29 }));
    expect(leap).toEqual([true, true, false]);
  });
});

describe('a time zone as typed', () => {
  test.each([
    ['+02:00', 120],
    ['-05:30', -330],
    ['+1', 60],
    ['UTC', 0],
    ['z', 0],
    ['−3', -180],
  ])('%s is %d minutes', (text, minutes) => {
    expect(accepted(parseZone(text))).toBe(minutes);
  });

  test.each(['+15:00', '-13', 'summer', '2', '+02:75'])('%s is refused', (text) => {
    expect(refusal(parseZone(text))).toContain('UTC');
  });
});
