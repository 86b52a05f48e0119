import type { MessageId } from '../../messages/say.js';
import { anyOf, type Between, exactly, parseBetween, type Usual } from '../../values/between.js';
import { parseBitRate, showBitRate } from '../../values/bit-rate.js';
import { parseCapacity, parseWritten } from '../../values/byte-size.js';
import { parseDays, parseHoursADay } from '../../values/duration.js';
import { parseMoment } from '../../values/moment.js';
import { problem, type Result } from '../../values/result.js';
import { parseShare } from '../../values/share.js';
import { SPEED_CLASSES, type SpeedClass } from '../storage/speed-class.js';
import { needed, optional, orUnknown, parseChoice } from './read-given.js';
import type { TopicInput } from './topic.js';

/** What is taken where nobody knows: bit/s, hours, shares, bytes. Judged, no source. */
const USUAL = {
  main: { low: 1e6, high: 12e6 },
  audio: { low: 0, high: 128e3 },
  hours: { low: 8, high: 24 },
  events: { low: 0.05, high: 1 },
  capacity: { low: 32e9, high: 256e9 },
  reserve: { low: 0.03, high: 0.1 },
} as const;

const LEAST_RATE = 16_000;
const CLASSES = Object.keys(SPEED_CLASSES) as readonly SpeedClass[];

/** What the sum about recording may be given. */
export const STORAGE_INPUTS: readonly TopicInput[] = [
  { id: 'main', ask: 'storage.ask-main' },
  { id: 'audio', ask: 'storage.ask-audio', optional: true },
  { id: 'hours', ask: 'storage.ask-hours', optional: true },
  { id: 'events', ask: 'storage.ask-events', optional: true },
  { id: 'capacity', ask: 'storage.ask-capacity' },
  { id: 'reserve', ask: 'storage.ask-reserve', optional: true },
  { id: 'days', ask: 'storage.ask-days', optional: true },
  { id: 'date', ask: 'storage.ask-date', optional: true },
  { id: 'today', ask: 'storage.ask-today', optional: true },
  { id: 'since', ask: 'storage.ask-since', optional: true },
  {
    id: 'card-class',
    ask: 'storage.ask-card-class',
    choices: [
      ...CLASSES.map((id) => ({ id, title: `storage.class-${id}` satisfies MessageId })),
      { id: 'dont-know', title: 'storage.class-dont-know' },
    ],
    optional: true,
  },
  { id: 'rated', ask: 'storage.ask-rated', optional: true },
];

/** How each of those inputs is read. */
export const STORAGE_READS = {
  main: needed(between(someRate, USUAL.main)),
  audio: optional(between(parseBitRate, USUAL.audio), exactly(0)),
  hours: optional(between(parseHoursADay, USUAL.hours), exactly(24)),
  events: optional(
    between((text) => parseShare(text, 0.001, 1), USUAL.events),
    exactly(1),
  ),
  capacity: needed(between(parseCapacity, USUAL.capacity)),
  reserve: optional(
    between((text) => parseShare(text, 0, 0.5), USUAL.reserve),
    anyOf(USUAL.reserve),
  ),
  days: optional(orUnknown(parseDays), undefined),
  date: optional(orUnknown(parseMoment), undefined),
  today: optional(orUnknown(parseMoment), undefined),
  since: optional(orUnknown(parseMoment), undefined),
  'card-class': optional(parseChoice([...CLASSES, 'dont-know']), 'dont-know'),
  rated: optional(orUnknown(parseWritten), undefined),
} as const;

function between(one: (text: string) => Result<number>, usual: Usual) {
  return (text: string): Result<Between> => parseBetween(text, one, usual);
}

/** A recording of no bits at all is a slip of the pen. */
function someRate(text: string): Result<number> {
  const rate = parseBitRate(text);
  if (!rate.ok || rate.value >= LEAST_RATE) return rate;
  return problem({ id: 'storage.rate-too-low', with: { least: showBitRate(LEAST_RATE) } });
}
