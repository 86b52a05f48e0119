import type { AppScreen } from '../types.js';
import { always, CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { networkOfPhone, onNetwork, openApp } from './hands.js';
import { complaint, isPicture, phoneOfCall } from './phones.js';

const SCREENS: Readonly<Record<AppScreen['shows'], string>> = {
  picture: 'picture',
  'camera-offline': 'offline',
  'no-connection': 'offline',
  waiting: 'waiting',
  'wrong-password': 'wrong-password',
  'empty-list': 'empty-list',
  // It stands still again and again, and then an old picture is what is seen.
  stutters: 'frozen',
};

const BUSY = /\b(?:busy|too many viewers|no free place)\b/i;

/** An app that can't connect may print a system's error, and those say busy of other things: only one that waits counts. */
function screenOf({ shows, words }: AppScreen): string {
  return shows === 'waiting' && BUSY.test(words) ? 'busy' : SCREENS[shows];
}

const CAMERA_AWAY = /\bcamera\b[^.]*\b(?:offline|not found)\b/i;
const NO_CONNECTION = /\bno\b[^.]*\b(?:connection|network|server|service|internet)\b/i;

/** As somebody who reads the words aloud: what to check is nothing missing, and words that name both settle neither. */
function blamedBy(words: string): string {
  const isCamera = CAMERA_AWAY.test(words);
  if (isCamera === NO_CONNECTION.test(words)) return 'not-said';
  return isCamera ? 'camera' : 'connection';
}

/** The Wi-Fi there, be it the guests', and mobile data. */
async function bothWays(seat: Seat): Promise<{ readonly wifi: boolean; readonly mobile: boolean }> {
  const at = await networkOfPhone(seat);
  const wifi = await onNetwork(seat, at === 'mobile' ? 'wifi' : at, () => openApp(seat));
  const mobile = await onNetwork(seat, 'mobile', () => openApp(seat));
  return { wifi: isPicture(wifi), mobile: isPicture(mobile) };
}

/** What the app shows, on which phone and on which network. */
export const APP_EYES: Eyes = {
  'exact-screen': async (seat) => value(screenOf(await complaint(seat))),
  'screen-blames': async (seat) => {
    const screen = await complaint(seat);
    return screenOf(screen) === 'offline' ? value(blamedBy(screen.words)) : CANT_TELL;
  },
  'their-words': async (seat) => value((await complaint(seat)).words),
  'other-words': always('none'),
  'phone-access': async (seat) => {
    const { wifi, mobile } = await bothWays(seat);
    // Where only the second phone is dark, nobody has seen that one on the Wi-Fi here.
    if (wifi && mobile) return isPicture(await openApp(seat, 'mobile')) ? value('both') : CANT_TELL;
    if (wifi) return value('only-wifi');
    return value(mobile ? 'only-mobile' : 'neither');
  },
  'which-cameras': always('only-camera'),
  // The other phone is on mobile data: it proves something of the first only where that one is dark there as well.
  'which-phones': async (seat) => {
    if (!isPicture(await openApp(seat, 'mobile')))
      return value((await phoneOfCall(seat)) === 'mobile' ? 'one' : 'all');
    const own = await onNetwork(seat, 'mobile', () => openApp(seat));
    return isPicture(own) ? CANT_TELL : value('one');
  },
  'other-phones-on-mobile': async (seat) => {
    if (isPicture(await openApp(seat, 'mobile'))) return value('all');
    // Where the second phone is the one of the call, the other one is the own, and that shows it there.
    return value((await phoneOfCall(seat)) === 'mobile' ? 'all' : 'none');
  },
  'other-site': always('no-such'),
  'when-dark': async (seat) => {
    const first = await complaint(seat);
    if (isPicture(first)) return CANT_TELL;
    if (first.shows === 'stutters') return value('on-and-off');
    const again = await complaint(seat);
    return value(isPicture(again) || again.shows === 'stutters' ? 'on-and-off' : 'always');
  },
  'privacy-mark': always(false),
  'in-front-of-lens': always('clear'),
};
