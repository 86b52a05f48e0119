import type { Given } from '../../arithmetic/topics/topic.js';
import { say } from '../../messages/say.js';
import { parseDays } from '../../values/duration.js';
import { rounded } from '../../values/rounded.js';
import { numberWithin } from './within.js';

/** Days that a card keeps, for sure and at most, and how many are wanted. */
export interface Days {
  readonly kind: 'days';
  readonly low: number;
  readonly high: number;
  readonly wanted: number | undefined;
  /** Days that the whole bar stands for. */
  readonly whole: number;
  readonly says: string;
}

/** The days of the sum about recording. */
export function cardDays(given: Given, data: unknown): Days | undefined {
  const [low, high] = [numberWithin(data, 'daysKept', 'low'), numberWithin(data, 'daysKept', 'high')];
  if (low === undefined || high === undefined) return undefined;
  const typed = given.days === undefined ? undefined : parseDays(given.days);
  const wanted = typed?.ok ? typed.value : undefined;
  const words = { low: rounded(low), high: rounded(high) };
  return {
    kind: 'days',
    low,
    high,
    wanted,
    // Some room behind the last mark, or it would look cut off.
    whole: Math.max(high, wanted ?? 0) * 1.15,
    says:
      wanted === undefined
        ? say('picture.days-says', words)
        : say('picture.days-says-wanted', { ...words, wanted: rounded(wanted) }),
  };
}
