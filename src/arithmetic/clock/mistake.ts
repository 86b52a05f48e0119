import type { MessageId } from '../../messages/say.js';
import { SECONDS_A_DAY, SECONDS_AN_HOUR } from '../../values/duration.js';
import { type Moment, showMoment } from '../../values/moment.js';
import type { Worked } from '../worked.js';
import { type Offset, span } from './offset.js';

/** What an offset looks like; judged from its size, no source. */
export type Mistake = 'none' | 'summer-time' | 'half-day' | 'zone' | 'date' | 'never-set' | 'drift';

const WORDS = {
  none: 'clock.mistake-none',
  'summer-time': 'clock.mistake-summer-time',
  'half-day': 'clock.mistake-half-day',
  zone: 'clock.mistake-zone',
  date: 'clock.mistake-date',
  'never-set': 'clock.mistake-never-set',
  drift: 'clock.mistake-drift',
} as const satisfies Record<Mistake, MessageId>;

/** A set clock may be this far off besides; judged, no source. */
const GIVE = 120;
/** Zones of the time zone database lie a quarter of an hour apart at least, and 26 h at most. */
const QUARTER = 900;
const WIDEST = 26 * SECONDS_AN_HOUR;
/** A clock without a battery starts in one of these years (from memory). */
const START_YEARS: ReadonlySet<string> = new Set(['1970', '2000']);

/** What the offset of a clock looks like: one hour is summer time, other hours and quarters a zone. */
export function clockMistake(camera: Moment, offset: Offset): Worked<Mistake> {
  const value = mistake(camera, offset);
  const by = span(Math.abs(nearest(offset, QUARTER)));
  return { value, lines: [{ id: WORDS[value], with: { by } }] };
}

function mistake(camera: Moment, offset: Offset): Mistake {
  if (holds(offset, 0)) return 'none';
  const size = Math.abs(nearest(offset, QUARTER));
  const isQuarter = size > 0 && holds(offset, nearest(offset, QUARTER));
  if (isQuarter && size === SECONDS_AN_HOUR) return 'summer-time';
  if (isQuarter && size === 12 * SECONDS_AN_HOUR) return 'half-day';
  if (holds(offset, nearest(offset, SECONDS_A_DAY))) {
    return isStartYear(camera) ? 'never-set' : 'date';
  }
  if (isQuarter && size <= WIDEST && isZone(size)) return 'zone';
  return isStartYear(camera) && size > 30 * SECONDS_A_DAY ? 'never-set' : 'drift';
}

/** Between two zones lie whole hours mostly; half and quarter hours only together with some hours. */
function isZone(size: number): boolean {
  return size % SECONDS_AN_HOUR === 0 || size >= 2 * QUARTER;
}

function nearest({ low, high }: Offset, step: number): number {
  return Math.round((low + high) / 2 / step) * step;
}

function holds({ low, high }: Offset, target: number): boolean {
  return low - GIVE <= target && target <= high + GIVE;
}

function isStartYear(camera: Moment): boolean {
  return START_YEARS.has(showMoment(camera.seconds).slice(0, 4));
}
