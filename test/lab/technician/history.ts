import type { Story } from '../types.js';
import { always, CANT_TELL, type Eyes, value } from './eye.js';
import { labelledRouter, routerAddress } from './hands.js';
import { showsSomewhere } from './phones.js';
import { openRouter } from './router-page.js';
import { row } from './rows.js';

const CHANGES: Readonly<Record<Story['changed'], string>> = {
  nothing: 'none',
  'not-known': 'none',
  router: 'router',
  provider: 'router',
  phone: 'phone',
  password: 'password',
  'building-work': 'building',
  storm: 'storm',
  'power-cut': 'storm',
  settings: 'settings',
  'new-device': 'device',
  firmware: 'update',
};

const LAST_SEEN: Readonly<Record<Story['when'], string>> = {
  today: 'Early this morning',
  days: 'Some days ago, in the evening',
  weeks: 'Some weeks ago, I could not say which day',
  'never-worked': 'Never, it has not shown yet',
};

/** What people on site tell of the past, of themselves and of their network. */
export const HISTORY_EYES: Eyes = {
  'may-ask': always('yes'),
  'at-site': always('at-site'),
  // Somebody rings from a line at the place; the phone that shows nothing lies beside it, or is away.
  'call-phone': always(false),
  'call-back-agreed': always(true),
  'dependents-agreed': always(true),
  'owner-agrees': always(true),
  'network-run-by': always('own'),
  // Nobody says never of a picture that shows on another phone, or on another network, at this moment.
  'ever-worked': async (seat) => value(seat.scene.story.everWorked || (await showsSomewhere(seat))),
  'what-changed': ({ scene }) => value(CHANGES[scene.story.changed]),
  'tried-already': ({ scene: { story } }) => value(story.tried?.length ? story.tried : ['none']),
  'last-picture': async (seat) => {
    const { when } = seat.scene.story;
    if (when === 'never-worked' && (await showsSomewhere(seat)))
      return value('Where it is dark, never; elsewhere it shows now');
    return value(LAST_SEEN[when]);
  },
  'camera-name': always('Yard'),
  'camera-place': always('Wall by the yard gate, 3 m'),
  'new-camera-count': async (seat) =>
    seat.scene.story.everWorked || (await showsSomewhere(seat)) ? CANT_TELL : value(1),
  'new-ones-together': always(false),
  'second-router-there': async (seat) => {
    const outside = row((await openRouter(seat)) ?? '', 'Internet address') ?? '';
    const [gateway, label] = [await routerAddress(seat), await labelledRouter(seat)];
    // The firm's box may be a router as well, or something else hands out addresses: people hesitate.
    const isMore = gateway !== label;
    const isBehind = /^(?:10|172\.(?:1[6-9]|2\d|3[01])|192\.168)\./.test(outside);
    return isMore || isBehind ? CANT_TELL : value(false);
  },
  'plugs-put-on': ({ scene }) => (scene.story.changed === 'building-work' ? CANT_TELL : value(false)),
  'wifi-same': ({ scene }) => {
    const { changed } = scene.story;
    if (changed === 'router') return value(true);
    return changed === 'password' ? CANT_TELL : value(false);
  },
  'old-values-noted': always(true),
  'lights-noted': always(true),
  'update-safe': always(true),
  promised: always('A call back today at five in the afternoon'),
};
