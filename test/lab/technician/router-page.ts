import type { Seat } from './eye.js';
import { openPage, routerAddress, usedAddress } from './hands.js';
import { rows } from './rows.js';

/** The router's own page on the computer, as its owner reads it, or undefined where it does not open. */
export async function openRouter(seat: Seat): Promise<string | undefined> {
  const opened = await openPage(seat, 'computer', `http://${await routerAddress(seat)}/`);
  return opened?.body.startsWith('Router') ? opened.body : undefined;
}

export interface Listed {
  readonly address: string;
  readonly mac: string;
  readonly name: string;
}

/** The list of devices, or undefined where the page does not open. Like most, it is looked through afresh when opened. */
export async function deviceList(seat: Seat): Promise<readonly Listed[] | undefined> {
  await seat.run('router', ['ping', '-n', '-c', '1', '-W', '1', usedAddress()], 2500);
  const page = await openRouter(seat);
  if (page === undefined) return undefined;
  return rows(page, 'Device').flatMap((line) => {
    const [address, mac, ...name] = line.split(/\s+/);
    return address === undefined || mac === undefined
      ? []
      : [{ address, mac: mac.toLowerCase(), name: name.join(' ') }];
  });
}
