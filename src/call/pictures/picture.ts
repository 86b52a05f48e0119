import type { Given } from '../../arithmetic/topics/topic.js';
import { cardDays, type Days } from './card-days.js';
import { type NetworkBar, networkBar } from './network-bar.js';
import { type Reach, reachOf } from './reach.js';
import { cableVolts, type Volts } from './volts.js';

/** What a sum looks like: numbers to draw, and the same in words. */
export type Picture = NetworkBar | Volts | Days | Reach;

/** The picture of a topic's sum, from what was typed and the numbers that came of it; not every topic has one. */
export function pictureOf(
  topic: string,
  given: Given,
  data: Readonly<Record<string, unknown>>,
): Picture | undefined {
  switch (topic) {
    case 'subnet':
    case 'free-address':
    case 'address-plan':
    case 'temporary-address':
      return networkBar(topic, given, data);
    case 'dc-supply':
    case 'poe':
      return cableVolts(data);
    case 'storage':
      return cardDays(given, data);
    case 'reach':
      return reachOf(given, data);
    default:
      return undefined;
  }
}
