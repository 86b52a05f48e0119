import { type Day, dayAfter1970, daysSince1970, isDay } from './calendar.js';
import { SECONDS_A_DAY, SECONDS_A_MINUTE, SECONDS_AN_HOUR } from './duration.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';
import { writtenDays } from './written-day.js';
import { parseZone } from './zone.js';

/** A date and time as somebody read it off: somewhere in the `within` seconds that begin at `seconds`. */
export interface Moment {
  readonly kind: 'moment';
  /** From 1970-01-01 00:00 to what was written, taken as it stands. */
  readonly seconds: number;
  /** 1 where seconds were read, 60 where only minutes were, 86,400 where only the day was. */
  readonly within: number;
  /** How many minutes the written time is ahead of UTC, where it says so. */
  readonly zoneMinutes?: number;
}

export const FIRST_YEAR = 1970;
export const LAST_YEAR = 2099;

const WEEKDAY = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]? /i;
const TIME =
  /(?:^|[ T])(\d{1,2})[:.](\d{2})(?:[:.](\d{2})(?:[.,]\d+)?)? ?([ap]\.?m\.?)?(?=$| |[zZ+−-]|[a-z]{3})/i;

/**
 * The date and time a person typed or pasted: `2026-11-25 14:30`, `25.11.2026 14:30:05`,
 * `25 Nov 2026 2:30 pm`, `2026-11-25T14:30Z`, `Nov 25 14:30:00 2026 GMT`; the day alone too.
 * Refuses what has two readings (`3/4/2026`), what no calendar has, and years before 1970 or after 2099.
 */
export function parseMoment(text: string): Result<Moment> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const said = { text: quoted(tidied.value) };
  const whole = tidied.value.replace(WEEKDAY, '').replace(/(\d{4}-\d{2}-\d{2})T(?=\d)/i, '$1 ');
  const time = TIME.exec(whole);
  const before = time === null ? whole : whole.slice(0, time.index).trim();
  const after = time === null ? '' : whole.slice(time.index + time[0].length).trim();
  // Certificates are printed with the year after the time.
  const [, year = '', zoneText = ''] = /^(\d{4})?(?: ?)(.*)$/.exec(after) ?? [];
  const days = writtenDays(`${before.replace(/,$/, '')} ${year}`.trim());
  const [day, other] = days;
  if (day === undefined) return problem({ id: 'moment.unclear', with: said });
  if (other !== undefined) {
    const readings = { one: showDay(day), other: showDay(other) };
    return problem({ id: 'moment.two-readings', with: { ...said, ...readings } });
  }
  if (day.year < FIRST_YEAR || day.year > LAST_YEAR) {
    return problem({ id: 'moment.year', with: { ...said, min: FIRST_YEAR, max: LAST_YEAR } });
  }
  const clock = time === null ? { seconds: 0, within: SECONDS_A_DAY } : clockTime(time);
  if (clock === undefined || !isDay(day)) return problem({ id: 'moment.no-such-day', with: said });
  const seconds = daysSince1970(day) * SECONDS_A_DAY + clock.seconds;
  const moment: Moment = { kind: 'moment', seconds, within: clock.within };
  if (zoneText === '') return ok(moment);
  const zone = parseZone(zoneText);
  return zone.ok ? ok({ ...moment, zoneMinutes: zone.value }) : zone;
}

/** Seconds since 1970 as `2026-11-25 14:30:05`. */
export function showMoment(seconds: number): string {
  const whole = Math.floor(seconds);
  const days = Math.floor(whole / SECONDS_A_DAY);
  const ofDay = whole - days * SECONDS_A_DAY;
  const parts = [ofDay / SECONDS_AN_HOUR, (ofDay / SECONDS_A_MINUTE) % 60, ofDay % 60];
  const clock = parts.map((part) => String(Math.floor(part)).padStart(2, '0')).join(':');
  return `${showDay(dayAfter1970(days))} ${clock}`;
}

/** A moment as exactly as it was read: the day, the minute or the second. */
export function showRead({ seconds, within }: Moment): string {
  const shown = showMoment(seconds);
  if (within === SECONDS_A_DAY) return shown.slice(0, 10);
  return within === SECONDS_A_MINUTE ? shown.slice(0, 16) : shown;
}

/** The same in UTC where the zone is known, and as written where it is not. */
export function showInUtc(moment: Moment): string {
  const { seconds, zoneMinutes } = moment;
  if (zoneMinutes === undefined || moment.within === SECONDS_A_DAY) return showRead(moment);
  return `${showRead({ ...moment, seconds: seconds - zoneMinutes * SECONDS_A_MINUTE })} UTC`;
}

function showDay({ year, month, day }: Day): string {
  return [year, month, day].map((part) => String(part).padStart(2, '0')).join('-');
}

function clockTime(time: RegExpExecArray): { readonly seconds: number; readonly within: number } | undefined {
  const half = time[4]?.toLowerCase().slice(0, 1);
  const [hours, minutes, seconds] = [Number(time[1]), Number(time[2]), Number(time[3] ?? 0)];
  if (minutes > 59 || seconds > 59) return undefined;
  if (half === undefined ? hours > 23 : hours < 1 || hours > 12) return undefined;
  const ofDay = half === undefined ? hours : (hours % 12) + (half === 'p' ? 12 : 0);
  return {
    seconds: ofDay * SECONDS_AN_HOUR + minutes * SECONDS_A_MINUTE + seconds,
    within: time[3] === undefined ? SECONDS_A_MINUTE : 1,
  };
}
