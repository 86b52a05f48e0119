import type { MessageId } from '../../messages/say.js';
import type { Between } from '../../values/between.js';
import { showBitRates } from '../../values/bit-rate.js';
import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';

/**
 * The least speed in MB/s at which a card of each class writes one stream, as the SD Association
 * publishes it: speed class C, UHS class U, video class V.
 */
export const SPEED_CLASSES = {
  c2: 2,
  c4: 4,
  c6: 6,
  c10: 10,
  u1: 10,
  u3: 30,
  v6: 6,
  v10: 10,
  v30: 30,
  v60: 60,
  v90: 90,
} as const;

export type SpeedClass = keyof typeof SPEED_CLASSES;

/** Frames come in bursts, so that a card should write twice the mean rate; judged, no source. */
const BURSTS = 2;

/** Whether a card's class is enough for a stream in bit/s. Below its class a card may still be quick enough. */
export function speedClass(card: SpeedClass, rate: Between): Worked<Judged<'card-class'>> {
  const least = SPEED_CLASSES[card] * 8e6;
  const said = { card: card.toUpperCase(), megabytes: SPEED_CLASSES[card], rate: showBitRates(rate) };
  const isEnough = least >= BURSTS * rate.high;
  const id: MessageId = isEnough ? 'storage.class-enough' : 'storage.class-short';
  return {
    value: isEnough ? { verdict: 'fine' } : { verdict: 'doubtful', decides: 'card-class' },
    lines: [{ id, with: { ...said, least: showBitRates({ low: least, high: least }) } }],
  };
}
