import { bottomUp } from './bottom-up.js';
import { gainPerMinute } from './gain-per-minute.js';
import { halfSplitting } from './half-splitting.js';
import { knowing } from './knowing.js';
import { ours } from './ours.js';
import type { NamedPolicy } from './policy.js';
import { whatPeopleDo } from './what-people-do.js';

/** Bits a minute: the one of 0.005 to 0.4 that does best on 800 calls of other seeds. */
const WORTH_ASKING = 0.1;

/** Ours first, the bound last. */
export const POLICIES: readonly NamedPolicy[] = [
  { name: 'ours', policyFor: () => ours },
  { name: 'gain per minute', policyFor: () => gainPerMinute(WORTH_ASKING) },
  { name: 'half-splitting', policyFor: () => halfSplitting },
  { name: 'list from power up', policyFor: () => bottomUp },
  { name: 'what people do', policyFor: () => whatPeopleDo },
  { name: 'ours, told the numbers', policyFor: () => ours, ranksByTruth: true },
  { name: 'knows the cause', policyFor: knowing, knows: true },
];
