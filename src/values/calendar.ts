/** A day of the Gregorian calendar; `month` is 1 to 12. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const DAYS_IN_400_YEARS = 146_097;
/** From 1 March of the year 0 to 1 January 1970. */
const DAYS_TO_1970 = 719_468;

/**
 * Days from 1 January 1970 to a day, by counting years from March, so that the leap day comes last
 * (Richards 1998, "Mapping Time", chapter 25; Gregorian rule of leap years).
 */
export function daysSince1970({ year, month, day }: Day): number {
  const fromMarch = month <= 2 ? year - 1 : year;
  const cycle = Math.floor(fromMarch / 400);
  const ofCycle = fromMarch - cycle * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfCycle = ofCycle * 365 + Math.floor(ofCycle / 4) - Math.floor(ofCycle / 100) + dayOfYear;
  return cycle * DAYS_IN_400_YEARS + dayOfCycle - DAYS_TO_1970;
}

/** The day that lies so many whole days after 1 January 1970; the inverse of `daysSince1970`. */
export function dayAfter1970(days: number): Day {
  const shifted = days + DAYS_TO_1970;
  const cycle = Math.floor(shifted / DAYS_IN_400_YEARS);
  const ofCycle = shifted - cycle * DAYS_IN_400_YEARS;
  const year = Math.floor(
    (ofCycle - Math.floor(ofCycle / 1460) + Math.floor(ofCycle / 36_524) - Math.floor(ofCycle / 146_096)) /
      365,
  );
  const ofYear = ofCycle - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: cycle * 400 + year + (month <= 2 ? 1 : 0),
    month,
    day: ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1,
  };
}

/** Whether the calendar has that day. */
export function isDay(day: Day): boolean {
  if (day.month < 1 || day.month > 12 || day.day < 1) return false;
  const back = dayAfter1970(daysSince1970(day));
  return back.month === day.month && back.day === day.day;
}
