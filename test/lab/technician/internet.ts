import { always, CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { networkOfPhone, onNetwork, openWeb } from './hands.js';
import { WEB_PAGE } from './site-facts.js';

async function isOnline(seat: Seat): Promise<boolean> {
  return (await openWeb(seat, 'computer'))?.body.includes(WEB_PAGE.words) ?? false;
}

/** The phone on the site's own Wi-Fi: as it is, or brought there from mobile data. */
async function onSite<T>(seat: Seat, work: () => Promise<T>): Promise<T> {
  const at = await networkOfPhone(seat);
  return onNetwork(seat, at === 'mobile' ? 'wifi' : at, work);
}

/** Whether the site has internet, and what the internet firm says. */
export const INTERNET_EYES: Eyes = {
  'others-online': async (seat) => value(await isOnline(seat)),
  'site-web': (seat) =>
    onSite(seat, async () => {
      const opened = await openWeb(seat, 'phone');
      if (opened === undefined || opened.code >= 400) return value('fails');
      if (opened.body.includes(WEB_PAGE.words)) return value('opens');
      const isFirm = /\b(bill|invoice|unpaid|used up|suspended|data plan)\b/i.test(opened.body);
      return value(isFirm ? 'firm-page' : 'sign-in-page');
    }),
  'address-seen-outside': (seat) =>
    onSite(seat, async () => {
      const seen = WEB_PAGE.seen.exec((await openWeb(seat, 'phone'))?.body ?? '')?.[1];
      return seen === undefined ? CANT_TELL : value(seen);
    }),
  'line-account': async (seat) => ((await isOnline(seat)) ? value('clear') : CANT_TELL),
  'internet-comes-by': always('line'),
  'line-dependents': always(['none']),
  'mobile-data-off': always(true),
  'provider-notice': always(false),
};
