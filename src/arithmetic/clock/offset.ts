import type { Moment } from '../../values/moment.js';
import { showRead } from '../../values/moment.js';
import { rounded } from '../../values/rounded.js';
import type { Worked } from '../worked.js';

/** Seconds that a clock is ahead (negative: behind), at least and at most. */
export interface Offset {
  readonly low: number;
  readonly high: number;
}

/**
 * How far the camera's clock is ahead of the true time. What was read to the minute only may be up to a
 * minute later, so that the offset is a range. Zones count where both times have one.
 */
export function clockOffset(camera: Moment, truth: Moment): Worked<Offset> {
  const areZoned = camera.zoneMinutes !== undefined && truth.zoneMinutes !== undefined;
  const zone = areZoned ? ((camera.zoneMinutes ?? 0) - (truth.zoneMinutes ?? 0)) * 60 : 0;
  const start = camera.seconds - truth.seconds - zone;
  const value = { low: start - truth.within, high: start + camera.within };
  const said = { camera: showRead(camera), truth: showRead(truth) };
  return {
    value,
    lines: [
      { id: areZoned ? 'clock.both-zoned' : 'clock.both-as-written', with: said },
      ...offsetLine(value),
    ],
  };
}

function offsetLine({ low, high }: Offset) {
  const mid = (low + high) / 2;
  const give = (high - low) / 2;
  if (low <= 0 && high >= 0) return [{ id: 'clock.offset-none', with: { give: span(give) } } as const];
  const said = { by: span(Math.abs(mid)), give: span(give) };
  return [{ id: mid > 0 ? 'clock.offset-ahead' : 'clock.offset-behind', with: said } as const];
}

/** Seconds in the unit that suits their size. */
export function span(seconds: number): string {
  if (seconds < 120) return `${rounded(seconds)} s`;
  if (seconds < 7200) return `${rounded(seconds / 60)} min`;
  return seconds < 172_800 ? `${rounded(seconds / 3600)} h` : `${rounded(seconds / 86_400)} days`;
}
