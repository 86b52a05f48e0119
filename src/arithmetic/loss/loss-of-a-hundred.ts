import type { Worked } from '../worked.js';
import { lossStanding } from './loss-standing.js';

/** How much is lost on the way, as far as a hundred pings can tell. */
export type LossSize = 'none' | 'some' | 'heavy';

const PINGS = 100;
/** From this share on, at the least that fits the count, hardly a picture passes; judged, no source. */
const HEAVY = 0.24;
/** Less than this may be one packet that got lost by chance; judged, no source. */
const CHANCE = 0.005;

/**
 * What `percent` (0 to 100) lost of one hundred pings says: judged by the least loss that fits (Wilson 1927),
 * so that a single lost packet makes no bad way.
 */
export function lossOfAHundred(percent: number): Worked<LossSize> {
  const lost = Math.round(percent);
  const { value, lines } = lossStanding(PINGS, PINGS - lost);
  if (value.interval.low > HEAVY) return { value: 'heavy', lines };
  return { value: value.interval.low > CHANCE ? 'some' : 'none', lines };
}
