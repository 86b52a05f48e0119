import { describe, expect, test } from 'vitest';
import { SPEED_CLASSES, type SpeedClass, speedClass } from '../../../src/arithmetic/storage/speed-class.js';
import { DAYS_A_YEAR, wear } from '../../../src/arithmetic/storage/wear.js';
import { whyGone } from '../../../src/arithmetic/storage/why-gone.js';
import { exactly } from '../../../src/values/between.js';
import { parseMoment } from '../../../src/values/moment.js';
import { accepted } from '../../values/accepted.js';
import { words } from '../given.js';
import { publishedRow } from '../network-references.js';

// SD Association, speed classes; for the video classes a card maker's page.
describe('the speed class of a card', () => {
  test('has the published least speed', () => {
    const row = publishedRow<Record<string, number>>('f-sd');
    const ours = Object.entries(SPEED_CLASSES).map(([id, speed]) => [id.toUpperCase(), speed]);
    expect(Object.fromEntries(ours)).toEqual(row);
  });

  // 10 MB/s is 80 Mbit/s: far above one camera.
  test('10 takes 80 Mbit/s, and any one camera with bursts', () => {
    const { C10_mbit } = publishedRow<{ C10_mbit: number }>('f-sd-mbit');
    expect(words(speedClass('c10', exactly(12e6)).lines)[0]).toContain(`${C10_mbit} Mbit/s`);
    expect(speedClass('c10', exactly(12e6)).value.verdict).toBe('fine');
  });

  test('is doubted, never called impossible, where it is short: a class is a least', () => {
    const short = speedClass('c2', exactly(12e6));
    expect(short.value).toEqual({ verdict: 'doubtful', decides: 'card-class' });
  });

  test('never gets worse with a quicker card', () => {
    const classes = Object.keys(SPEED_CLASSES) as SpeedClass[];
    const inOrder = classes.sort((one, other) => SPEED_CLASSES[one] - SPEED_CLASSES[other]);
    const isFine = inOrder.map((one) => speedClass(one, exactly(20e6)).value.verdict === 'fine');
    expect(isFine).toEqual([...isFine].sort());
    expect(new Set(isFine).size).toBe(2);
  });
});

describe('wear', () => {
  const recording = { main: exactly(4e6), audio: exactly(0), hours: exactly(24), events: exactly(1) };
  const card = { capacity: exactly(128e9), reserve: exactly(0) };

  // 43.2 GB a day (published worked example) times the days of a Gregorian year.
  test('is what is written in a year, and how often that fills the card', () => {
    const { GB_day } = publishedRow<{ GB_day: number }>('f-ex-4cams');
    const { value } = wear(recording, card);
    expect(value.bytesAYear.low).toBeCloseTo(GB_day * 1e9 * DAYS_A_YEAR, -3);
    expect(value.fillsAYear.high).toBeCloseTo((GB_day * DAYS_A_YEAR) / 128, 6);
    expect(value.years).toBeUndefined();
  });

  test('in years times what a year writes is the rated amount', () => {
    const { value } = wear(recording, card, 64e12);
    expect((value.years?.low ?? 0) * value.bytesAYear.low).toBeCloseTo(64e12, -3);
  });
});

describe('a date whose recording is missing', () => {
  const moment = (text: string) => accepted(parseMoment(text));
  const now = moment('2026-11-25 14:30');
  const kept = { low: 7, high: 9 };

  test.each([
    ['2026-11-20 10:00', undefined, 'kept', 'fine', undefined],
    ['2026-11-10 10:00', undefined, 'written-over', 'impossible', undefined],
    ['2026-11-17 10:00', undefined, 'perhaps', 'doubtful', 'capacity'],
    ['2026-11-20 10:00', '2026-11-22 08:00', 'not-begun', 'impossible', undefined],
    ['2026-11-20 10:00', '2026-11-19 08:00', 'kept', 'fine', undefined],
    ['2026-11-20', '2026-11-20 08:00', 'perhaps', 'doubtful', 'since'],
    ['2026-11-26 10:00', undefined, 'to-come', 'impossible', undefined],
  ])('%s, recording since %s: %s', (date, since, whereabouts, verdict, decides) => {
    const begun = since === undefined ? undefined : moment(since);
    const { value } = whyGone(kept, moment(date), now, begun);
    expect([value.whereabouts, value.verdict, value.decides]).toEqual([whereabouts, verdict, decides]);
  });

  test('is settled by the time of day where only the day is known', () => {
    const exact = { low: 7, high: 7 };
    expect(whyGone(exact, moment('2026-11-18'), now).value.decides).toBe('date');
  });
});
