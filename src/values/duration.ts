import { type Measure, parseMeasure } from './measure.js';
import { ok, type Result } from './result.js';

export const SECONDS_A_MINUTE = 60;
export const SECONDS_AN_HOUR = 3600;
export const SECONDS_A_DAY = 86_400;

const ALL_DAY = /^(?:24 ?\/ ?7|always|all day|continuous(?:ly)?|round the clock)$/i;

const HOURS: Measure = {
  units: [
    { unit: 'h', size: 1, also: ['hours a day', 'h a day', 'h/day', 'hours/day'] },
    { unit: 'min', size: 1 / 60, also: ['minutes a day', 'min a day'] },
  ],
  bare: 'h',
  min: 1 / 60,
  max: 24,
  example: '8 h',
};

const DAYS: Measure = {
  units: [
    { unit: 'days', size: 1 },
    { unit: 'weeks', size: 7, also: ['week', 'w'] },
    { unit: 'h', size: 1 / 24 },
  ],
  bare: 'days',
  min: 1 / 24,
  max: 3650,
  example: '30 days',
};

const MILLISECONDS: Measure = {
  units: [
    { unit: 'ms', size: 1 },
    { unit: 's', size: 1000 },
  ],
  bare: 'ms',
  min: 0,
  max: 60_000,
  example: '45 ms',
};

const WINDOW: Measure = {
  units: [
    { unit: 'min', size: 60 },
    { unit: 's', size: 1 },
    { unit: 'h', size: 3600 },
  ],
  bare: 'min',
  min: 1,
  max: SECONDS_A_DAY,
  example: '5 min',
};

/** Hours a day, a minute to 24 h; hours where no unit is typed. `24/7` and `always` are 24. */
export function parseHoursADay(text: string): Result<number> {
  return ALL_DAY.test(text.trim()) ? ok(24) : parseMeasure(text, HOURS);
}

/** Days, an hour to ten years; days where no unit is typed. */
export function parseDays(text: string): Result<number> {
  return parseMeasure(text, DAYS);
}

/** A delay in milliseconds, nought to a minute; milliseconds where no unit is typed. */
export function parseMilliseconds(text: string): Result<number> {
  return parseMeasure(text, MILLISECONDS);
}

/** A time window in seconds, a second to a day; minutes where no unit is typed. */
export function parseWindow(text: string): Result<number> {
  return parseMeasure(text, WINDOW);
}
