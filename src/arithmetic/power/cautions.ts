import type { Sentence } from '../../messages/say.js';

/** For every sum that ends in somebody touching a supply. */
export const SUPPLY_CAUTIONS: readonly Sentence[] = [
  { id: 'power.caution-mains' },
  { id: 'power.caution-live' },
  { id: 'power.caution-code' },
];

/** For every sum about a cable run as well: ladders, outdoor copper. */
export const RUN_CAUTIONS: readonly Sentence[] = [
  { id: 'power.caution-ladder' },
  { id: 'power.caution-outdoors' },
  ...SUPPLY_CAUTIONS,
];
