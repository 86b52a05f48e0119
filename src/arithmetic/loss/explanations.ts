import type { MessageId, Sentence } from '../../messages/say.js';
import type { Worked } from '../worked.js';
import { type Gaps, gaps, type PingSummary, type Spread, spread } from './shape.js';

/** What may lie behind lost or late packets. */
export type Explanation = 'wireless' | 'cable' | 'congestion' | 'same-address';
/** How the numbers go with it. All of it judged: numbers of a ping prove none of them. */
export type Fit = 'fits' | 'could' | 'against';
/** Whether any part of the way is wireless. */
export type Way = 'wireless' | 'cable-only' | 'dont-know';

export type Fits = Readonly<Record<Explanation, Fit>>;

const WORDS: Readonly<Record<Explanation, Readonly<Record<Fit, MessageId>>>> = {
  wireless: {
    fits: 'loss.wireless-fits',
    could: 'loss.wireless-could',
    against: 'loss.wireless-against',
  },
  cable: { fits: 'loss.cable-fits', could: 'loss.cable-could', against: 'loss.cable-against' },
  congestion: {
    fits: 'loss.congestion-fits',
    could: 'loss.congestion-could',
    against: 'loss.congestion-against',
  },
  'same-address': {
    fits: 'loss.same-address-fits',
    could: 'loss.same-address-could',
    against: 'loss.same-address-against',
  },
};

/** Above this share of loss one address used twice comes into question; judged, no source. */
const HEAVY = 0.2;

/**
 * How well a ping goes with a wireless hop, a bad cable, a full line and one address used twice:
 * judged from how gaps and round trips lie, no source. `undefined` where there is nothing to explain.
 */
export function explanations(ping: PingSummary, way: Way): Worked<Fits | undefined> {
  const shape = { gaps: gaps(ping), spread: spread(ping) };
  const hasLoss = ping.received < ping.sent;
  if (ping.received === 0 || (!hasLoss && ping.duplicates === 0 && shape.spread !== 'swollen')) {
    return { value: undefined, lines: [] };
  }
  const value: Fits = {
    wireless: wireless(shape.spread, way),
    cable: hasLoss ? cable(shape, way) : 'against',
    congestion: congestion(shape.spread),
    'same-address': sameAddress(ping, shape),
  };
  const lines = (Object.keys(WORDS) as readonly Explanation[]).map(
    (one): Sentence => ({ id: WORDS[one][value[one]] }),
  );
  return { value, lines: [{ id: 'loss.judged' }, ...lines] };
}

interface Shape {
  readonly gaps: Gaps;
  readonly spread: Spread;
}

function wireless(lies: Spread, way: Way): Fit {
  if (way === 'cable-only' || lies === 'tight') return 'against';
  return lies === 'peaks' ? 'fits' : 'could';
}

function cable({ gaps: lie, spread: lies }: Shape, way: Way): Fit {
  if (lies === 'swollen') return 'against';
  return lies === 'tight' && lie !== 'bursts' && way !== 'wireless' ? 'fits' : 'could';
}

function congestion(lies: Spread): Fit {
  if (lies === 'swollen') return 'fits';
  return lies === 'tight' ? 'against' : 'could';
}

function sameAddress({ sent, received, duplicates }: PingSummary, { gaps: lie }: Shape): Fit {
  if (duplicates > 0) return 'fits';
  return lie !== 'single' && (sent - received) / sent >= HEAVY ? 'could' : 'against';
}
