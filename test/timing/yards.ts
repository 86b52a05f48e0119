import { timesAsLong, timesAsLongAwaited } from './times-as-long.js';

const LINE = 'eth0: inet 172.23.40.57/24 brd 172.23.40.255 scope global, 3 of 5 seen\n';
const YARD = LINE.repeat(Math.ceil(500_000 / LINE.length));

/**
 * How many times as long a reading takes as a yard, which is what any reader of lines has to do with half a megabyte:
 * letters made alike, words found, a record written. No further tries once it is below `most`.
 */
export function yardsOf(reading: () => void, most: number): number {
  return timesAsLong(reading, readAYard, (yards) => yards < most);
}

/** The same for a reading that is awaited. */
export function yardsAwaited(reading: () => Promise<unknown>, most: number): Promise<number> {
  return timesAsLongAwaited(reading, readAYard, (yards) => yards < most);
}

function readAYard(): number {
  let written = 0;
  for (const line of YARD.split('\n')) {
    const alike = line.normalize('NFKD').toLowerCase();
    const words = alike.match(/\p{L}+|(?:\d{1,3}\.){3}\d{1,3}/gu) ?? [];
    written += JSON.stringify({ line, words }).length;
  }
  return written;
}
