import type { AppScreen } from '../types.js';
import { always, CANT_TELL, type Eye, type Eyes, nobodyKnows, value } from './eye.js';
import { complaint } from './phones.js';

/** All is well with the account, unless the app's own words speak of it: then people are no longer sure. */
function unlessApp(shows: readonly AppScreen['shows'][], usual: string | boolean | number): Eye {
  return async (seat) => (shows.includes((await complaint(seat)).shows) ? CANT_TELL : value(usual));
}

/** Accounts, passwords, and who may watch. */
export const SIGN_IN_EYES: Eyes = {
  'account-shown': unlessApp(['empty-list'], 'signed-in'),
  'live-right': unlessApp(['empty-list'], 'yes'),
  'whose-camera': unlessApp(['empty-list'], 'own'),
  'typed-for-what': unlessApp(['wrong-password'], 'same'),
  'code-comes': always('none'),
  'key-asked': always(false),
  'password-known': always(true),
  'tries-at-password': async (seat) => value((await complaint(seat)).shows === 'wrong-password' ? 1 : 0),
  'which-password': nobodyKnows('only who changed one knows which; the scene says it where somebody does'),
};
