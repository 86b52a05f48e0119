import type { Sentence } from '../../messages/say.js';
import { rounded, showRange } from '../../values/rounded.js';
import type { Worked } from '../worked.js';
import { bytesADayRange, type Recording, type Store } from './recording.js';

/** The mean year of the Gregorian calendar. */
export const DAYS_A_YEAR = 365.2425;

interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Bytes written a year, how often that fills the card, and the years to the rated amount where it is known. */
export interface Wear {
  readonly bytesAYear: Ends;
  readonly fillsAYear: Ends;
  readonly years?: Ends;
}

/** How fast a card is worn by recording. `rated`: bytes the maker says may be written to it in all. */
export function wear(recording: Recording, store: Store, rated?: number): Worked<Wear> {
  const day = bytesADayRange(recording);
  const bytesAYear = { low: day.low * DAYS_A_YEAR, high: day.high * DAYS_A_YEAR };
  const fillsAYear = {
    low: bytesAYear.low / store.capacity.high,
    high: bytesAYear.high / store.capacity.low,
  };
  const written: Sentence = {
    id: 'storage.wear',
    with: {
      terabytes: showRange(bytesAYear.low / 1e12, bytesAYear.high / 1e12, 'TB'),
      fills: showRange(fillsAYear.low, fillsAYear.high, ''),
    },
  };
  if (rated === undefined) return { value: { bytesAYear, fillsAYear }, lines: [written] };
  const years = { low: rated / bytesAYear.high, high: rated / bytesAYear.low };
  const line: Sentence = {
    id: 'storage.wear-years',
    with: { rated: rounded(rated / 1e12), years: showRange(years.low, years.high, '') },
  };
  return { value: { bytesAYear, fillsAYear, years }, lines: [written, line] };
}
