import type { MessageId } from '../../messages/say.js';
import type { Judged, Verdict } from '../judge.js';
import type { Worked } from '../worked.js';
import { type Offset, span } from './offset.js';

/** The least freshness limit suggested for a sign-in token (OASIS WSS UsernameToken Profile 1.1.1, section 3.1). */
export const TOKEN_WINDOW_SECONDS = 300;

const WORDS = {
  fine: 'clock.token-taken',
  doubtful: 'clock.token-doubtful',
  impossible: 'clock.token-refused',
} as const satisfies Record<Verdict, MessageId>;

/**
 * Whether a sign-in token made by a clock with this offset is still taken within `windowSeconds`
 * either way. `coarser`: which of the two times was read less exactly, and so would decide it.
 */
export function tokenWindow(
  offset: Offset,
  windowSeconds: number,
  coarser: 'camera' | 'truth' = 'camera',
): Worked<Judged<'camera' | 'truth'>> {
  const farthest = Math.max(Math.abs(offset.low), Math.abs(offset.high));
  const nearest =
    offset.low <= 0 && offset.high >= 0 ? 0 : Math.min(Math.abs(offset.low), Math.abs(offset.high));
  const verdict: Verdict =
    farthest <= windowSeconds ? 'fine' : nearest > windowSeconds ? 'impossible' : 'doubtful';
  return {
    value: verdict === 'doubtful' ? { verdict, decides: coarser } : { verdict },
    lines: [{ id: WORDS[verdict], with: { window: span(windowSeconds) } }],
  };
}
