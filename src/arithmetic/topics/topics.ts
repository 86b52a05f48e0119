import { ADDRESS } from './address.js';
import { ADDRESS_PLAN } from './address-plan.js';
import { BANDWIDTH } from './bandwidth.js';
import { CLOCK } from './clock.js';
import { DC_SUPPLY } from './dc-supply.js';
import { FREE_ADDRESS } from './free-address.js';
import { LOSS } from './loss.js';
import { NAT } from './nat.js';
import { OVERLAP } from './overlap.js';
import { POE } from './poe.js';
import { POE_BUDGET } from './poe-budget.js';
import { REACH } from './reach.js';
import { STORAGE } from './storage.js';
import { SUBNET } from './subnet.js';
import { TEMPORARY_ADDRESS } from './temporary-address.js';
import type { Topic } from './topic.js';

/** Every sum that can be done alone, in the order in which they are listed. */
export const TOPICS: readonly Topic[] = [
  SUBNET,
  REACH,
  OVERLAP,
  ADDRESS,
  TEMPORARY_ADDRESS,
  FREE_ADDRESS,
  ADDRESS_PLAN,
  NAT,
  POE,
  POE_BUDGET,
  DC_SUPPLY,
  BANDWIDTH,
  STORAGE,
  LOSS,
  CLOCK,
];
