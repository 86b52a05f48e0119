import { always, CANT_TELL, type Eye, type Eyes, nobodyKnows, value } from './eye.js';
import { openPage, openWeb } from './hands.js';
import { complaint, onMobileData } from './phones.js';
import { OUTSIDE_NOTED, WEB_PAGE } from './site-facts.js';

/** Only who typed an address in the app has anything to look at. */
function whereForwarded(eye: Eye): Eye {
  return (seat) => (seat.scene.plain['remote-way'] === 'forwarded' ? eye(seat) : CANT_TELL);
}

/** How phone and camera find each other: by the service, unless the scene says otherwise. */
export const REMOTE_EYES: Eyes = {
  'remote-way': always('service'),
  'numbers-or-name': whereForwarded(always('numbers')),
  'page-on-mobile': whereForwarded((seat) =>
    onMobileData(seat, async (phone) => {
      const opened = await openPage(seat, phone, `http://${OUTSIDE_NOTED}/`);
      return value(opened !== undefined && (opened.code < 400 || opened.code === 401));
    }),
  ),
  'app-address-today': whereForwarded(async (seat) => {
    const seen = WEB_PAGE.seen.exec((await openWeb(seat, 'computer'))?.body ?? '')?.[1];
    return seen === undefined ? CANT_TELL : value(seen === OUTSIDE_NOTED);
  }),
  'forward-line-now': nobodyKnows('the page of this router has no lines for opened ways'),
  'add-try': nobodyKnows('this app has no way to add a camera'),
  'other-customers': nobodyKnows('the help desk looks, not somebody on site'),
  'update-of-what': nobodyKnows('nothing asks for an update'),
  'app-region': always('right'),
  'camera-update-mark': async (seat) =>
    (await complaint(seat)).shows === 'empty-list' ? CANT_TELL : value(false),
};
