import type { SiteFault } from './fault.js';
import { pairOf, type SitePair } from './pair.js';
import { JUST_SO, NEVER, since } from './stories.js';

/** Pairs that really come together, and pairs that only chance brings together. */
export function pairsOf(faults: readonly SiteFault[]): readonly SitePair[] {
  const named = (id: string): SiteFault => {
    const found = faults.find((fault) => fault.id === id);
    if (!found) throw new Error(`no fault ${id}`);
    return found;
  };
  const pair = (one: string, other: string, story: Parameters<typeof pairOf>[2]) =>
    pairOf(named(one), named(other), story);
  return [
    pair('gateway-empty', 'dns-of-old-network', since('settings')),
    pair('gateway-nobody', 'dns-empty', since('settings')),
    pair('gateway-outside-onlink', 'phone-app-kept-from-data', since('settings')),
    pair('dns-nobody-on-site', 'router-paused-camera', since('settings')),
    pair('patch-lead-out', 'camera-has-new-password', since('building-work', 'today')),
    pair('camera-stands-still', 'phone-ad-blocker', JUST_SO),
    pair('socket-of-guest-network', 'gateway-another-device', since('building-work')),
    pair('switch-off-router', 'remote-viewing-off', since('building-work', 'today')),
    pair('router-passes-nothing-on', 'phone-data-used-up', JUST_SO),
    pair('clock-years-back', 'phone-app-kept-from-data', since('power-cut')),
    pair('share-taken-back', 'provider-black-hole', JUST_SO),
    pair('mask-cuts-router-off', 'dns-of-old-network', NEVER),
    pair('wifi-keeps-devices-apart', 'gateway-empty', since('router')),
  ];
}
