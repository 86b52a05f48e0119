import { CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { labelledMac, lostPings, networkOfPhone, onNetwork, openPage, usedAddress } from './hands.js';
import { phoneOfCall } from './phones.js';
import { row } from './rows.js';
import { CAMERA_NOTED, CAMERA_TITLE } from './site-facts.js';

const CAMERA_URL = `http://${CAMERA_NOTED}/`;

/** A box that asks for a name counts as a page; a refusal is none. */
function isPage(opened: { readonly code: number } | undefined): boolean {
  return opened !== undefined && (opened.code < 400 || opened.code === 401);
}

/** Whether a page says of itself that it is of another device: by its number, or else by its name. */
async function isOfAnother(seat: Seat, body: string): Promise<boolean> {
  const number = row(body, 'MAC address')?.toLowerCase();
  const label = number === undefined ? '' : await labelledMac(seat);
  // A camera can be renamed on its page, but not renumbered: where both numbers can be read, they settle it.
  if (number !== undefined && label !== '') return number !== label;
  const name = /^(.+) - status$/m.exec(body)?.[1];
  return name !== undefined && name !== CAMERA_TITLE;
}

/** Whether devices on the site reach the camera, without the internet. */
export const REACH_EYES: Eyes = {
  'camera-ping': async (seat) => value((await lostPings(seat, 'computer', usedAddress(), 4, 0.3)) < 100),
  'ping-loss': async (seat) => value(await lostPings(seat, 'computer', usedAddress(), 100, 0.02)),
  'camera-page': async (seat) => {
    const opened = await openPage(seat, 'computer', CAMERA_URL);
    if (!isPage(opened)) return value('nothing');
    const body = opened?.body ?? '';
    if (await isOfAnother(seat, body)) return value('another');
    return value(/(choose|set) (a|your) (first|new) password/i.test(body) ? 'first-setup' : 'opens');
  },
  'other-device-page': (seat) =>
    onNetwork(seat, 'wifi', async () => value(isPage(await openPage(seat, 'phone', CAMERA_URL)))),
  'phone-wifi': async (seat) => {
    if ((await phoneOfCall(seat)) === 'mobile') return value('no-wifi');
    const at = await networkOfPhone(seat);
    const { stdout } = await seat.run('phone', ['ip', '-o', 'link', 'show', 'dev', 'wlan0']);
    if (!/<[^>]*\bLOWER_UP\b/.test(stdout)) return value('no-wifi');
    return value(at === 'mobile' ? 'no-wifi' : at === 'guest' ? 'guest' : 'main');
  },
  'computer-connections': async (seat) => {
    const { stdout } = await seat.run('computer', ['ip', '-4', '-o', 'addr', 'show', 'up']);
    const names = [...stdout.matchAll(/^\d+: (\S+)/gm)].map(([, name = '']) => name);
    if (names.some((name) => /^(?:tun|tap|wg|ppp|vpn)/.test(name))) return value('tunnel');
    const link = await seat.run('computer', ['ip', '-o', 'link', 'show', 'up']);
    const isWired = /^\d+: eth0[@:].*\bLOWER_UP\b/m.test(link.stdout);
    const isRadio = /^\d+: wl\S*[@:].*\bLOWER_UP\b/m.test(link.stdout);
    if (isWired && isRadio) return value('both');
    if (isWired) return value('lead');
    return isRadio ? value('wifi') : CANT_TELL;
  },
};
