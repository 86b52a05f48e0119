import { SECONDS_A_DAY } from '../../values/duration.js';
import { type Moment, showMoment, showRead } from '../../values/moment.js';
import type { Worked } from '../worked.js';
import type { Offset } from './offset.js';

/** Where a recording stands by the camera's clock: seconds since 1970 as its clock shows them. */
export interface FoundInstead {
  readonly low: number;
  readonly high: number;
  readonly isAnotherDay: boolean;
}

/** Where to look for what happened at a true time, if the clock was as wrong then as it is now. */
export function foundInstead(event: Moment, offset: Offset): Worked<FoundInstead> {
  const low = event.seconds + offset.low;
  const high = event.seconds + event.within + offset.high;
  const day = (seconds: number): number => Math.floor(seconds / SECONDS_A_DAY);
  const isAnotherDay = day(low) !== day(event.seconds) || day(high) !== day(event.seconds);
  const said = {
    event: showRead(event),
    low: showMoment(Math.max(0, low)),
    high: showMoment(Math.max(0, high)),
  };
  return {
    value: { low, high, isAnotherDay },
    lines: [
      { id: 'clock.look-at', with: said },
      ...(isAnotherDay ? [{ id: 'clock.look-at-other-day' } as const] : []),
    ],
  };
}
