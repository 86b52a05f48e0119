import type { Lab } from '../types.js';
import { typeOnCamera } from './camera-settings.js';
import { once } from './fault.js';
import { setInService } from './homes.js';
import { openWay, typeInApps } from './opened-way.js';
import { forwardWall } from './walls.js';

/**
 * The service only brings phone and camera together, and never passes the picture on itself. A healthy site works so
 * too; it lasts until the lab is restored, for it is nothing to mend.
 */
export async function withoutRelay(lab: Lab): Promise<void> {
  lab.defer(once(setInService(lab, { relay: false })));
}

/** The camera asks a public name server, so that its names are no part of what is wrong. Nothing to mend. */
export async function withPublicNames(lab: Lab): Promise<void> {
  lab.defer(once(await typeOnCamera(lab, { dns: ['203.0.113.53'] })));
}

/** The site's router passes no UDP but names and time: the picture then goes through the service. Nothing to mend. */
export async function withoutPunching(lab: Lab): Promise<void> {
  lab.defer(
    once(await forwardWall(lab, 'router', 'oifname "wan0" meta l4proto udp th dport != { 53, 123 } drop')),
  );
}

/** The mobile firm gives its phones IPv6 only, and translates what they send to the rest. Nothing to mend. */
export async function withIpv6Only(lab: Lab): Promise<void> {
  await lab.carrier('ipv6-only');
}

/** The owner opened a way in the router, and typed its outside in the apps, in numbers. Nothing to mend. */
export async function withOpenedWay(lab: Lab): Promise<void> {
  lab.defer(once(await openWay(lab)));
  lab.defer(once(typeInApps(lab, 'numbers')));
}
