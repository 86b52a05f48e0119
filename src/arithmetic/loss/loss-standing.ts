import type { Sentence } from '../../messages/say.js';
import { showShare, showShares } from '../../values/share.js';
import type { Judged, Verdict } from '../judge.js';
import type { Worked } from '../worked.js';
import { type Interval, packetsFor, wilson } from './wilson.js';

/** Up to this share of loss a picture is good, above the other it cannot be watched; judged, no source. */
export const GOOD_LOSS = 0.01;
export const BAD_LOSS = 0.1;

/** The loss on the way, as far as a ping tells. */
export interface LossStanding extends Judged<'sent'> {
  readonly interval: Interval;
}

/** What a ping says of the loss: a range (Wilson 1927), never the bare per cent of a few packets. */
export function lossStanding(sent: number, received: number): Worked<LossStanding> {
  const lost = sent - received;
  const interval = wilson(lost, sent);
  const verdict = verdictOf(interval);
  const counted: Sentence = {
    id: 'loss.interval',
    with: { lost, sent, share: showShare(lost / sent), range: showShares(interval) },
  };
  if (received === 0) {
    return {
      value: { interval, verdict: 'impossible' },
      lines: [{ id: 'loss.nothing-back', with: { sent } }],
    };
  }
  const limits = { good: showShare(GOOD_LOSS), bad: showShare(BAD_LOSS), packets: packetsFor(GOOD_LOSS) };
  // Wholly between the limits more packets would change nothing.
  if (interval.low > GOOD_LOSS && interval.high <= BAD_LOSS) {
    return { value: { interval, verdict }, lines: [counted, { id: 'loss.middling', with: limits }] };
  }
  const value: LossStanding =
    verdict === 'doubtful' ? { interval, verdict, decides: 'sent' } : { interval, verdict };
  return { value, lines: [counted, { id: WORDS[verdict], with: limits }] };
}

const WORDS = {
  fine: 'loss.good',
  doubtful: 'loss.more-pings',
  impossible: 'loss.bad',
} as const satisfies Record<Verdict, string>;

function verdictOf({ low, high }: Interval): Verdict {
  if (high <= GOOD_LOSS) return 'fine';
  return low > BAD_LOSS ? 'impossible' : 'doubtful';
}
