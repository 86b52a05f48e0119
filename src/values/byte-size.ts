import type { Between } from './between.js';
import { type Measure, parseMeasure } from './measure.js';
import type { Result } from './result.js';
import { rounded, showRange } from './rounded.js';

/** The bytes in a decimal gigabyte, as printed on a card (SI prefix). */
export const GB = 1e9;
/** The bytes in a binary gibibyte, as many computers count (IEC 80000-13). */
export const GIB = 2 ** 30;

/** What a card or drive holds, in bytes: 1 GB to 100 TB. Nobody sells one in gigabits, so `Gb` is GB here. */
const CAPACITY: Measure = {
  units: [
    { unit: 'GB', size: GB, also: ['g', 'gb', 'Gb', 'gig', 'gigs'] },
    { unit: 'TB', size: 1e12, also: ['t', 'tb', 'Tb'] },
    { unit: 'MB', size: 1e6, also: ['Mb'] },
    { unit: 'GiB', size: GIB },
    { unit: 'TiB', size: 2 ** 40 },
  ],
  bare: 'GB',
  min: GB,
  max: 100e12,
  example: '128 GB',
};

/** How much may be written before a card is worn out: 0.1 TB to 100,000 TB. */
const WRITTEN: Measure = {
  units: [
    { unit: 'TB', size: 1e12, also: ['t', 'tb', 'TBW', 'tbw'] },
    { unit: 'GB', size: GB },
  ],
  bare: 'TB',
  min: 1e11,
  max: 1e17,
  example: '64 TB',
};

/** The capacity a person typed, in bytes; gigabytes where no unit is typed. */
export function parseCapacity(text: string): Result<number> {
  return parseMeasure(text, CAPACITY);
}

/** The rated amount of writing a person typed, in bytes; terabytes where no unit is typed. */
export function parseWritten(text: string): Result<number> {
  return parseMeasure(text, WRITTEN);
}

/** Bytes in decimal gigabytes. */
export function showGigabytes(bytes: number): string {
  return `${rounded(bytes / GB)} GB`;
}

/** Bytes in binary gibibytes. */
export function showGibibytes(bytes: number): string {
  return `${rounded(bytes / GIB)} GiB`;
}

/** A range of bytes in decimal megabytes, gigabytes or terabytes. */
export function showBytes(bytes: Pick<Between, 'low' | 'high'>): string {
  if (bytes.high >= 1e12) return showRange(bytes.low / 1e12, bytes.high / 1e12, 'TB');
  if (bytes.high >= GB) return showRange(bytes.low / GB, bytes.high / GB, 'GB');
  return showRange(bytes.low / 1e6, bytes.high / 1e6, 'MB');
}
