import type { MessageId } from '../../messages/say.js';
import { SECONDS_A_DAY } from '../../values/duration.js';
import { type Moment, showRead } from '../../values/moment.js';
import { showRange } from '../../values/rounded.js';
import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';
import type { Kept } from './keeps.js';

/** Where a recording of a given date is. */
export type Whereabouts = 'kept' | 'written-over' | 'perhaps' | 'not-begun' | 'to-come';

interface Found extends Judged<'capacity' | 'date' | 'since'> {
  readonly whereabouts: Whereabouts;
}

const WORDS = {
  kept: 'storage.date-kept',
  'written-over': 'storage.date-written-over',
  perhaps: 'storage.date-perhaps',
  'not-begun': 'storage.date-not-begun',
  'to-come': 'storage.date-to-come',
} as const satisfies Record<Whereabouts, MessageId>;

/**
 * Why the recording of a date is gone, or that it should be there: its age against the days kept, and
 * against when recording began or the card was last emptied. The times are taken as written, in one zone.
 */
export function whyGone(kept: Kept, date: Moment, today: Moment, since?: Moment): Worked<Found> {
  const age = {
    low: (today.seconds - date.seconds - date.within) / SECONDS_A_DAY,
    high: (today.seconds + today.within - date.seconds) / SECONDS_A_DAY,
  };
  const value = found(kept, date, age, since);
  const said = {
    date: showRead(date),
    age: showRange(Math.max(0, age.low), Math.max(0, age.high), ''),
    since: since === undefined ? '' : showRead(since),
    kept: showRange(kept.low, kept.high, ''),
  };
  return { value, lines: [{ id: WORDS[value.whereabouts], with: said }] };
}

function found(
  kept: Kept,
  date: Moment,
  age: { readonly low: number; readonly high: number },
  since?: Moment,
): Found {
  if (age.high < 0) return { whereabouts: 'to-come', verdict: 'impossible' };
  if (since !== undefined && date.seconds + date.within <= since.seconds) {
    return { whereabouts: 'not-begun', verdict: 'impossible' };
  }
  if (age.low > kept.high) return { whereabouts: 'written-over', verdict: 'impossible' };
  const isWithin = age.high <= kept.low;
  const hasBegun = since === undefined || date.seconds >= since.seconds + since.within;
  if (isWithin && hasBegun) return { whereabouts: 'kept', verdict: 'fine' };
  return { whereabouts: 'perhaps', verdict: 'doubtful', decides: decides() };

  function decides(): 'capacity' | 'date' | 'since' {
    if (isWithin) return 'since';
    return kept.high - kept.low < age.high - age.low ? 'date' : 'capacity';
  }
}
