import { always, type Eyes, value } from './eye.js';
import { openWeb } from './hands.js';
import { onMobileData, phoneOfCall } from './phones.js';
import { WEB_PAGE } from './site-facts.js';

/** The phone of the call itself: its settings, and its mobile data. */
export const PHONE_EYES: Eyes = {
  'app-may-use-local': always('allowed'),
  'app-may-use-mobile': always(true),
  'app-update': always(false),
  'far-wifi-try': always('no-such'),
  'phone-bars': (seat) =>
    onMobileData(seat, async (phone) => {
      const { stdout } = await seat.run(phone, ['ip', '-o', 'link', 'show', 'dev', 'wwan0']);
      return value(/<[^>]*\bLOWER_UP\b/.test(stdout) ? 'bars' : 'none');
    }),
  'web-on-mobile': (seat) =>
    onMobileData(seat, async (phone) =>
      value((await openWeb(seat, phone))?.body.includes(WEB_PAGE.words) ?? false),
    ),
  // A key at the top of the phone stands for a tunnel that is up.
  'vpn-mark': async (seat) => {
    const { stdout } = await seat.run(await phoneOfCall(seat), ['ip', '-o', 'link', 'show', 'up']);
    return value(/^\d+: (?:tun|tap|wg|ppp|vpn)/m.test(stdout));
  },
};
