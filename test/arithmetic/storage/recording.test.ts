import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keeps, keepsDays } from '../../../src/arithmetic/storage/keeps.js';
import { bytesADay, daysKept, rateForDays, usableBytes } from '../../../src/arithmetic/storage/recording.js';
import { type Between, exactly } from '../../../src/values/between.js';
import { words } from '../given.js';
import { publishedRow } from '../network-references.js';

function recording(mbits: number, hours = 24, events = 1, audio = 0) {
  return {
    main: exactly(mbits * 1e6),
    audio: exactly(audio),
    hours: exactly(hours),
    events: exactly(events),
  };
}

function store(bytes: number, reserve = 0) {
  return { capacity: exactly(bytes), reserve: exactly(reserve) };
}

function range(low: number, high: number): Between {
  return { low, high, isGuess: false };
}

function aDay(mbits: number, hours = 24): number {
  return bytesADay({ main: mbits * 1e6, audio: 0, hours, events: 1 });
}

describe('what is recorded a day', () => {
  // Video file formula page: GB = Mbit/s x minutes x 0.0075, 10.8 GB per Mbit/s and day.
  test('follows the published formula', () => {
    const row = publishedRow<Record<string, number>>('f-formula');
    expect(aDay(1)).toBeCloseTo((row.gb_per_mbit_day ?? 0) * 1e9, 3);
    expect(aDay(1)).toBeCloseTo((row.gb_per_mbit_minute ?? 0) * 1440e9, 3);
  });

  // Worked by the same formula, from memory: 8 Mbit/s for an hour is 3.6 GB.
  test('is the worked 3.6 GB for an hour of 8 Mbit/s', () => {
    const row = publishedRow<{ mbit_s: number; hours: number; GB: number }>('f-ex-2');
    expect(aDay(row.mbit_s, row.hours)).toBeCloseTo(row.GB * 1e9, 3);
  });

  test('counts the sound as well', () => {
    const sound = bytesADay({ main: 0, audio: 64_000, hours: 24, events: 1 });
    expect(sound).toBeCloseTo(64_000 * 10_800, 3);
  });

  // Table from memory, in decimal GB and binary GiB.
  test.each(
    publishedRow<readonly { mbit_s: number; GB_h: number; GB_day: number; GiB_day: number }[]>('f-table'),
  )('is that of the table for $mbit_s Mbit/s', ({ mbit_s, GB_h, GB_day, GiB_day }) => {
    expect(aDay(mbit_s, 1)).toBeCloseTo(GB_h * 1e9, 3);
    expect(aDay(mbit_s)).toBeCloseTo(GB_day * 1e9, 3);
    expect(aDay(mbit_s) / 2 ** 30).toBeCloseTo(GiB_day, 3);
  });

  // Worked example of a web page on recording storage: four cameras at 4 Mbit/s for 30 days are 5184 GB.
  test('is the published amount for four cameras', () => {
    const row = publishedRow<{ mbit_s: number; cameras: number; days: number; GB_day: number; GB: number }>(
      'f-ex-4cams',
    );
    expect(aDay(row.mbit_s)).toBeCloseTo(row.GB_day * 1e9, 3);
    expect(aDay(row.mbit_s) * row.days * row.cameras).toBeCloseTo(row.GB * 1e9, 1);
  });
});

describe('the days that are kept', () => {
  // Worked retention, from memory: 1 TB at 4 Mbit/s is 23.148 days; 10 % kept free, four cameras: 5.208.
  test('are those of the worked example', () => {
    const row = publishedRow<{
      one_cam_days: number;
      four_cams_90pct_days: number;
      eight_h_day_days: number;
    }>('f-ex-3');
    expect(daysKept(recording(4), store(1e12)).low).toBeCloseTo(row.one_cam_days, 3);
    expect(daysKept(recording(16), store(1e12, 0.1)).low).toBeCloseTo(row.four_cams_90pct_days, 3);
    expect(daysKept(recording(4, 8), store(1e12)).high).toBeCloseTo(row.eight_h_day_days, 3);
  });

  test('times what is recorded a day fill what is usable', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 24, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 1e9, max: 1e13, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (mbits, hours, events, bytes, reserve) => {
          const made = recording(mbits, hours, events, 64_000);
          const days = daysKept(made, store(bytes, reserve)).low;
          const day = bytesADay({ main: mbits * 1e6, audio: 64_000, hours, events });
          const filled = (days * day) / usableBytes({ capacity: bytes, reserve });
          expect(filled).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('get fewer with a higher rate and more with a larger card', () => {
    const amounts = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(amounts, amounts, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const days = (mbits: number, gigabytes: number): number =>
          daysKept(recording(mbits), store(gigabytes * 1e9)).low;
        expect(days(more, 128)).toBeLessThanOrEqual(days(less, 128));
        expect(days(4, more)).toBeGreaterThanOrEqual(days(4, less));
      }),
    );
  });

  test('are said in hours where they are less than two', () => {
    const last = (gigabytes: number): string | undefined =>
      words(keeps(recording(4), store(gigabytes * 1e9)).lines).at(-1);
    expect(last(64)).toContain('35.56 hours');
    expect(last(128)).toContain('2.963 days');
  });

  test('lie between those of the worst and of the best numbers', () => {
    const made = { ...recording(4), main: range(2e6, 4e6) };
    const kept = daysKept(made, { capacity: exactly(128e9), reserve: range(0, 0.1) });
    expect(kept.low).toBeCloseTo(daysKept(recording(4), store(128e9, 0.1)).low, 9);
    expect(kept.high).toBeCloseTo(daysKept(recording(2), store(128e9)).high, 9);
  });
});

describe('the rate that keeps so many days', () => {
  test('put back keeps just those days', () => {
    const days = fc.integer({ min: 1, max: 365 });
    fc.assert(
      fc.property(days, fc.integer({ min: 8, max: 4000 }), (wanted, gigabytes) => {
        const card = store(gigabytes * 1e9, 0.07);
        const rate = rateForDays(recording(1), card, wanted);
        expect(daysKept(recording(rate / 1e6), card).low).toBeCloseTo(wanted, 6);
      }),
    );
  });

  test('is said to be none where sound alone takes too much', () => {
    const { lines, value } = keepsDays(recording(4, 24, 1, 128_000), store(1e9), 30);
    expect(value.verdict).toBe('impossible');
    expect(words(lines)[1]).toContain('sound alone');
  });

  test('comes with the verdict, and the input that would decide it', () => {
    const made = { ...recording(4), events: range(0.1, 1) };
    expect(keepsDays(made, store(128e9), 2).value).toEqual({ verdict: 'fine' });
    expect(keepsDays(made, store(128e9), 14).value).toEqual({ verdict: 'doubtful', decides: 'events' });
    expect(keepsDays(recording(4), store(128e9), 14).value).toEqual({ verdict: 'impossible' });
  });
});
