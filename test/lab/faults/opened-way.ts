import type { Lab } from '../types.js';
import type { Undo } from './fault.js';
import { setInApps } from './homes.js';

/** The router's outside, in numbers and by the name that its owner gave it. */
export const OUTSIDE = { numbers: '198.51.100.2', name: 'house.example' } as const;

const PORT = 8021;

/** What an owner types in the app who opened a way in the router. */
export const typedInApp = (where: keyof typeof OUTSIDE): string => `${OUTSIDE[where]}:${PORT}`;

/**
 * A way opened in the router, from a port of its outside to the page and picture of the camera. From the site itself it
 * works as well: the router takes such a call for one of its own (hairpin).
 */
export async function openWay(lab: Lab, to = '172.23.40.21'): Promise<Undo> {
  await lab.nft(
    'router',
    `table ip opened {
  chain prerouting {
    type nat hook prerouting priority -110; policy accept;
    ip daddr ${OUTSIDE.numbers} tcp dport ${PORT} dnat to ${to}:80
  }
  chain postrouting {
    type nat hook postrouting priority 90; policy accept;
    iifname "lan0" oifname "lan0" ct status dnat masquerade
  }
}`,
  );
  return () => lab.nft('router', 'delete table ip opened');
}

/** Both phones' apps hold the camera by an address, and ask no service where it is. */
export function typeInApps(lab: Lab, where: keyof typeof OUTSIDE): Undo {
  return setInApps(lab, { address: typedInApp(where) });
}
