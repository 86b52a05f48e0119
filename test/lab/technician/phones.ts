import type { AppScreen } from '../types.js';
import type { Seat } from './eye.js';
import { networkOfPhone, onNetwork, openApp } from './hands.js';

/** The caller's own phone, or the second one, which is always away on mobile data. */
export type Phone = 'phone' | 'mobile';

export const isPicture = ({ shows }: AppScreen): boolean => shows === 'picture';

/** The app of the own phone on the network that it is not on: mobile data, or else the Wi-Fi there. */
async function openElsewhere(seat: Seat): Promise<AppScreen> {
  const other = (await networkOfPhone(seat)) === 'mobile' ? 'wifi' : 'mobile';
  return onNetwork(seat, other, () => openApp(seat));
}

/**
 * The phone that people ring about: the second one where only that one is dark, else the own. The own one changes its
 * network only where nothing else settles it.
 */
export async function phoneOfCall(seat: Seat): Promise<Phone> {
  if (!isPicture(await openApp(seat))) return 'phone';
  if (isPicture(await openApp(seat, 'mobile'))) return 'phone';
  return isPicture(await openElsewhere(seat)) ? 'mobile' : 'phone';
}

/**
 * The app where the caller misses the picture: on the own phone as it is, or else on its other network, or else on the
 * second phone. Where nothing is missing, the own phone as it is.
 */
export async function complaint(seat: Seat): Promise<AppScreen> {
  const here = await openApp(seat);
  if (!isPicture(here)) return here;
  const there = await openElsewhere(seat);
  if (!isPicture(there)) return there;
  const away = await openApp(seat, 'mobile');
  return isPicture(away) ? here : away;
}

/** Does something with the phone of the call on mobile data; the second one is there already. */
export async function onMobileData<T>(seat: Seat, work: (phone: Phone) => Promise<T>): Promise<T> {
  const phone = await phoneOfCall(seat);
  return phone === 'mobile' ? work(phone) : onNetwork(seat, 'mobile', () => work(phone));
}

/** Whether the picture shows on any phone and any network now. */
export async function showsSomewhere(seat: Seat): Promise<boolean> {
  if (isPicture(await openApp(seat)) || isPicture(await openApp(seat, 'mobile'))) return true;
  return isPicture(await openElsewhere(seat));
}
