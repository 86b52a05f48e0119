/** Unit first, then other ways to type it. Capitals count only where two units differ by them alone. */
const SPELLINGS: readonly (readonly [string, ...string[]])[] = [
  ['m', 'metre', 'metres', 'meter', 'meters'],
  ['cm', 'centimetre', 'centimetres'],
  ['mm', 'millimetre', 'millimetres'],
  ['km', 'kilometre', 'kilometres'],
  ['ft', 'foot', 'feet', "'", '’', '′'],
  ['in', 'inch', 'inches', '"', '”', '″'],
  ['mm²', 'mm2', 'sq mm', 'mm^2'],
  ['AWG', 'gauge'],
  ['V', 'volt', 'volts', 'v dc', 'vdc'],
  ['mV', 'millivolt', 'millivolts'],
  ['A', 'amp', 'amps', 'ampere', 'amperes'],
  ['mA', 'milliamp', 'milliamps'],
  ['W', 'watt', 'watts'],
  ['kW', 'kilowatt', 'kilowatts'],
  ['ohm', 'ohms', 'Ω', '\u2126'],
  ['kohm', 'kilohm', 'kilohms', 'kΩ'],
  ['bit/s', 'bps', 'b/s'],
  ['kbit/s', 'kbps', 'kb/s', 'kbits/s', 'kbit', 'kbits'],
  ['Mbit/s', 'mbps', 'mb/s', 'mbits/s', 'mbit', 'mbits', 'megabit', 'megabits'],
  ['Gbit/s', 'gbps', 'gb/s', 'gbits/s', 'gbit', 'gbits'],
  ['kB/s', 'kBps', 'KB/s', 'KBps'],
  ['MB/s', 'MBps', 'MByte/s', 'MBytes/s'],
  ['GB/s', 'GBps', 'GByte/s'],
  ['kB', 'kb', 'kilobyte', 'kilobytes'],
  ['MB', 'mb', 'megabyte', 'megabytes'],
  ['GB', 'gb', 'gigabyte', 'gigabytes'],
  ['TB', 'tb', 'terabyte', 'terabytes'],
  ['GiB', 'gib'],
  ['TiB', 'tib'],
  ['Mb'],
  ['Gb'],
  ['ms', 'msec', 'millisecond', 'milliseconds'],
  ['s', 'sec', 'secs', 'second', 'seconds'],
  ['min', 'mins', 'minute', 'minutes'],
  ['h', 'hr', 'hrs', 'hour', 'hours'],
  ['days', 'd', 'day'],
  ['%', 'percent', 'per cent', 'pct'],
  ['dBm'],
  ['dB', 'decibel', 'decibels'],
  ['fps', 'frames per second', 'frames/s', 'frames a second'],
  ['GHz'],
  ['MHz'],
  ['°C', 'c', 'degrees c', 'degrees celsius', 'celsius'],
  ['°F', 'f', 'degrees f', 'degrees fahrenheit', 'fahrenheit'],
];

const EXACT: ReadonlyMap<string, string> = new Map(
  SPELLINGS.flatMap(([unit, ...others]) => [unit, ...others].map((spelling) => [spelling, unit])),
);
/** Earlier rows win, so that `mbps` and `mb/s` in any capitals not listed above are bits, as commonly typed. */
const LOWER_CASE: ReadonlyMap<string, string> = new Map(
  [...SPELLINGS]
    .reverse()
    .flatMap(([unit, ...others]) => [unit, ...others].map((spelling) => [spelling.toLowerCase(), unit])),
);

/** Whether two texts name the same unit. A unit not in the list matches itself alone, in any capitals. */
export function isSameUnit(one: string, other: string): boolean {
  return unitOf(one) === unitOf(other);
}

function unitOf(text: string): string {
  return EXACT.get(text) ?? LOWER_CASE.get(text.toLowerCase()) ?? text.toLowerCase();
}
