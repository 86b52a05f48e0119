import type { Between } from '../../values/between.js';
import { showBytes } from '../../values/byte-size.js';
import { SECONDS_AN_HOUR } from '../../values/duration.js';
import { showRange } from '../../values/rounded.js';
import type { Worked } from '../worked.js';

/** The days a month is counted with. */
export const DAYS_A_MONTH = 30;

/** Bytes, each at worst and at best. */
export interface MobileData {
  readonly hour: { readonly low: number; readonly high: number };
  readonly month: { readonly low: number; readonly high: number };
}

/** Bytes that a stream of `bitsPerSecond` is in so many hours: 1 Mbit/s is 0.45 GB an hour. */
export function bytesIn(bitsPerSecond: number, hours: number): number {
  return (bitsPerSecond / 8) * SECONDS_AN_HOUR * hours;
}

/** What watching costs of a data plan, for one phone, in bytes an hour and a month of 30 days. */
export function mobileData(rate: Between, cameras: Between, hoursADay: Between): Worked<MobileData> {
  const hour = { low: bytesIn(rate.low * cameras.low, 1), high: bytesIn(rate.high * cameras.high, 1) };
  const month = {
    low: hour.low * hoursADay.low * DAYS_A_MONTH,
    high: hour.high * hoursADay.high * DAYS_A_MONTH,
  };
  const hours = showRange(hoursADay.low, hoursADay.high, '');
  return {
    value: { hour, month },
    lines: [
      { id: 'bandwidth.data-hour', with: { amount: showBytes(hour) } },
      { id: 'bandwidth.data-month', with: { hours, days: DAYS_A_MONTH, amount: showBytes(month) } },
    ],
  };
}
