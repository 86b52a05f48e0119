import { ADDRESS } from '../arithmetic/topics/address.js';
import { BANDWIDTH } from '../arithmetic/topics/bandwidth.js';
import { CLOCK } from '../arithmetic/topics/clock.js';
import { DC_SUPPLY } from '../arithmetic/topics/dc-supply.js';
import { FREE_ADDRESS } from '../arithmetic/topics/free-address.js';
import { LOSS } from '../arithmetic/topics/loss.js';
import { NAT } from '../arithmetic/topics/nat.js';
import { OVERLAP } from '../arithmetic/topics/overlap.js';
import { POE } from '../arithmetic/topics/poe.js';
import { POE_BUDGET } from '../arithmetic/topics/poe-budget.js';
import { REACH } from '../arithmetic/topics/reach.js';
import { STORAGE } from '../arithmetic/topics/storage.js';
import { SUBNET } from '../arithmetic/topics/subnet.js';
import { TEMPORARY_ADDRESS } from '../arithmetic/topics/temporary-address.js';
import type { Topic } from '../arithmetic/topics/topic.js';

/** Every sum that can be done alone, in the order in which they are listed. */
export const TOPICS: readonly Topic[] = [
  SUBNET,
  REACH,
  OVERLAP,
  ADDRESS,
  TEMPORARY_ADDRESS,
  FREE_ADDRESS,
  NAT,
  POE,
  POE_BUDGET,
  DC_SUPPLY,
  BANDWIDTH,
  STORAGE,
  LOSS,
  CLOCK,
];

/** The topic with this id, if there is one. */
export function topicNamed(id: string): Topic | undefined {
  return TOPICS.find((topic) => topic.id === id);
}

/** The ids of all inputs of all topics, each once: what a command line may name. */
export function inputIds(): readonly string[] {
  return [...new Set(TOPICS.flatMap(({ inputs }) => inputs.map(({ id }) => id)))];
}
