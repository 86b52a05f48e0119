import type { AppScreen, Lab } from '../types.js';
import type { Breaks } from './fault.js';

/** What is seen on the site: the phone where it is now, the one on mobile data, and the page on the computer. */
export interface Screens {
  readonly phone: AppScreen;
  readonly mobile: AppScreen;
  readonly computer: boolean;
}

export async function screensOf(lab: Lab): Promise<Screens> {
  const [phone, mobile, page] = await Promise.all([
    lab.app('phone'),
    lab.app('mobile'),
    lab.cameraPage('computer'),
  ]);
  return { phone, mobile, computer: page !== undefined };
}

/** What a fault takes away is there. */
export function isGood({ phone, mobile, computer }: Screens, breaks: Breaks): boolean {
  const isOnPhone = phone.shows === 'picture';
  const isOnMobile = mobile.shows === 'picture';
  if (breaks === 'computer') return computer;
  if (breaks === 'wifi' || breaks === 'guest') return isOnPhone;
  return breaks === 'mobile' ? isOnMobile : isOnPhone && isOnMobile;
}

/** All of what a fault is said to take away is gone, and nothing else of the phones' is. */
export function isBrokenAsSaid({ phone, mobile, computer }: Screens, breaks: Breaks): boolean {
  const isPhoneDark = phone.shows !== 'picture';
  const isMobileDark = mobile.shows !== 'picture';
  if (breaks === 'computer') return !computer && !isPhoneDark && !isMobileDark;
  return (
    isPhoneDark === (breaks !== 'mobile' && breaks !== 'nothing') &&
    isMobileDark === ['both', 'mobile'].includes(breaks)
  );
}

export function inShort({ phone, mobile, computer }: Screens): string {
  const one = ({ shows, way }: AppScreen) => `${shows}${way === 'none' ? '' : ` (${way})`}`;
  return `phone ${one(phone)}, mobile ${one(mobile)}, page ${computer ? 'opens' : 'does not open'}`;
}
