import { type Answer, always, CANT_TELL, type Eyes, nobodyKnows, type Seat, value } from './eye.js';
import { labelledMac, openPage, openWeb } from './hands.js';
import { complaint, onMobileData } from './phones.js';
import { deviceList, openRouter } from './router-page.js';
import { rows } from './rows.js';
import { CAMERA_PORT, OUTSIDE_NOTED, WEB_PAGE } from './site-facts.js';

/** The line for the address in the app's settings; who was put in by a code has none. */
async function typedInApp(seat: Seat): Promise<string | undefined> {
  const { stdout } = await seat.run('phone', ['grep', '-o', '"address": "[^"]*"', 'app.json']);
  const typed = /"address": "([^"]+)"/.exec(stdout)?.[1];
  return typed ?? (seat.scene.plain['remote-way'] === 'forwarded' ? OUTSIDE_NOTED : undefined);
}

const NUMBERS = /^[\d.]+$/;

const hostOf = (typed: string): string => typed.split(':')[0] ?? '';

/** Only who typed an address in the app has anything to look at. */
function whereForwarded(
  look: (seat: Seat, typed: string) => Promise<Answer>,
): (seat: Seat) => Promise<Answer> {
  return async (seat) => {
    const typed = await typedInApp(seat);
    return typed === undefined ? CANT_TELL : look(seat, typed);
  };
}

/** Where a name leads that stands in the app: the help desk asks a name server for that. */
async function leadsTo(seat: Seat, host: string): Promise<readonly string[]> {
  if (NUMBERS.test(host)) return [host];
  const { stdout } = await seat.run('computer', ['dig', '+short', '+time=1', '+tries=1', host, 'A']);
  return stdout.split('\n').filter((line) => NUMBERS.test(line));
}

/** How phone and camera find each other, as it stands in the app and on the router's page. */
export const REMOTE_EYES: Eyes = {
  'remote-way': async (seat) => value((await typedInApp(seat)) === undefined ? 'service' : 'forwarded'),
  'numbers-or-name': whereForwarded(async (_, typed) =>
    value(NUMBERS.test(hostOf(typed)) ? 'numbers' : 'name'),
  ),
  'page-on-mobile': whereForwarded((seat, typed) =>
    onMobileData(seat, async (phone) => {
      const opened = await openPage(seat, phone, `http://${typed}/`);
      return value(opened !== undefined && (opened.code < 400 || opened.code === 401));
    }),
  ),
  'app-address-today': whereForwarded(async (seat, typed) => {
    const seen = WEB_PAGE.seen.exec((await openWeb(seat, 'computer'))?.body ?? '')?.[1];
    return seen === undefined ? CANT_TELL : value((await leadsTo(seat, hostOf(typed))).includes(seen));
  }),
  'forward-line-now': whereForwarded(async (seat, typed) => {
    const list = await deviceList(seat);
    const page = await openRouter(seat);
    const mac = await labelledMac(seat);
    const today = (list ?? []).filter((one) => one.mac === mac).map(({ address }) => address);
    if (page === undefined || today.length === 0) return CANT_TELL;
    const line = rows(page, 'Port forwarding').find((one) =>
      one.startsWith(`TCP ${typed.split(':')[1]} to `),
    );
    const [, to = '', port] = / to ([\d.]+) port (\d+)$/.exec(line ?? '') ?? [];
    return value(port === CAMERA_PORT && today.includes(to));
  }),
  'add-try': nobodyKnows('this app has no way to add a camera'),
  'other-customers': nobodyKnows('the help desk looks, not somebody on site'),
  'update-of-what': nobodyKnows('nothing asks for an update'),
  'app-region': always('right'),
  'camera-update-mark': async (seat) =>
    (await complaint(seat)).shows === 'empty-list' ? CANT_TELL : value(false),
};
