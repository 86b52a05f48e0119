import type { Day } from './calendar.js';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const DOTTED = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/;
const SLASHED = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4})$/;
const DAY_MONTH_NAME = /^(\d{1,2})(?:st|nd|rd|th|\.)?[ -]([a-z]{3,9})\.?,?[ -](\d{4})$/i;
const MONTH_NAME_DAY = /^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/i;

/**
 * The days that a written date may mean: none, one, or two where day and month can be taken for each
 * other (`3/4/2026`). Days that the calendar lacks are not sorted out.
 */
export function writtenDays(text: string): readonly Day[] {
  const [, year, month, day] = YEAR_FIRST.exec(text) ?? [];
  if (year !== undefined) return [numbers(year, month, day)];
  const dotted = DOTTED.exec(text);
  if (dotted !== null) return [numbers(dotted[3], dotted[2], dotted[1])];
  const slashed = SLASHED.exec(text);
  if (slashed !== null) return eitherWay(numbers(slashed[3], slashed[2], slashed[1]));
  const named = DAY_MONTH_NAME.exec(text);
  if (named !== null) return withName(named[3], named[2], named[1]);
  const nameFirst = MONTH_NAME_DAY.exec(text);
  return nameFirst === null ? [] : withName(nameFirst[3], nameFirst[1], nameFirst[2]);
}

function numbers(year = '', month = '', day = ''): Day {
  return { year: Number(year), month: Number(month), day: Number(day) };
}

function eitherWay(dayFirst: Day): readonly Day[] {
  const monthFirst = { ...dayFirst, month: dayFirst.day, day: dayFirst.month };
  if (dayFirst.month > 12) return [monthFirst];
  return dayFirst.day > 12 || dayFirst.day === dayFirst.month ? [dayFirst] : [dayFirst, monthFirst];
}

function withName(year = '', name = '', day = ''): readonly Day[] {
  const index = MONTHS.indexOf(name.slice(0, 3).toLowerCase());
  return index < 0 ? [] : [{ year: Number(year), month: index + 1, day: Number(day) }];
}
