import type { Between } from './between.js';
import { type Measure, parseMeasure } from './measure.js';
import { problem, type Result } from './result.js';
import { showRange } from './rounded.js';
import { quoted, tidy } from './tidy.js';

/** Bit rates in bit/s, nought to 10 Gbit/s. Data networks count in thousands: 1 kbit/s is 1,000 bit/s. */
const BIT_RATE: Measure = {
  units: [
    { unit: 'Mbit/s', size: 1e6, also: ['m', 'mb', 'meg', 'megs'] },
    { unit: 'kbit/s', size: 1e3, also: ['k', 'kb'] },
    { unit: 'Gbit/s', size: 1e9, also: ['g', 'gb', 'gig', 'gigs'] },
    { unit: 'bit/s', size: 1 },
    { unit: 'MB/s', size: 8e6 },
    { unit: 'kB/s', size: 8e3 },
  ],
  min: 0,
  max: 10e9,
  example: '4 Mbit/s',
};

const BYTES_ALONE = /\d ?[kKMG]B$/;

/** The bit rate a person typed, in bit/s. `MB` without a time may mean bits or bytes and is refused. */
export function parseBitRate(text: string): Result<number> {
  const tidied = tidy(text);
  if (tidied.ok && BYTES_ALONE.test(tidied.value)) {
    const said = { text: quoted(tidied.value), example: BIT_RATE.example };
    return problem({ id: 'amount.bits-or-bytes', with: said });
  }
  return parseMeasure(text, BIT_RATE);
}

/** A bit rate in the unit people use for its size. */
export function showBitRate(bitsPerSecond: number): string {
  return showBitRates({ low: bitsPerSecond, high: bitsPerSecond });
}

/** A range of bit rates in one unit. */
export function showBitRates(rate: Pick<Between, 'low' | 'high'>): string {
  const [unit, size] =
    rate.high >= 1e9 ? (['Gbit/s', 1e9] as const) : rate.high >= 1e6 ? MEGA : (['kbit/s', 1e3] as const);
  return showRange(rate.low / size, rate.high / size, unit);
}

const MEGA = ['Mbit/s', 1e6] as const;
