import type { AppScreen, Host, PhoneNetwork } from '../types.js';
import type { Seat } from './eye.js';
import { CAMERA_NOTED, ROUTER_LABEL, WEB_PAGE } from './site-facts.js';

/** A page in a browser: what came, or nothing. */
export interface Opened {
  readonly code: number;
  readonly body: string;
}

/** Types an address in a browser's top line. Whatever a server answers is a page, a box for a name included. */
export async function openPage(seat: Seat, host: Host, url: string): Promise<Opened | undefined> {
  const ran = await seat.run(
    host,
    ['curl', '-sS', '-k', '--connect-timeout', '2', '--max-time', '4', '-w', '\n%{http_code}', url],
    6000,
  );
  const lines = ran.stdout.trimEnd().split('\n');
  const code = Number(lines.at(-1));
  if (ran.code !== 0 || !Number.isFinite(code) || code === 0) return undefined;
  return { code, body: lines.slice(0, -1).join('\n') };
}

/** A page of the web that nobody has seen today. */
export function openWeb(seat: Seat, host: Host): Promise<Opened | undefined> {
  return openPage(seat, host, WEB_PAGE.url);
}

/** The camera's own page, as it stands on the screen. */
export async function cameraPage(
  seat: Seat,
  from: 'computer' | 'phone' = 'computer',
): Promise<string | undefined> {
  const text = await seat.lab.cameraPage(from);
  seat.saw(from, "opens the camera's page", text ?? 'nothing comes up');
  return text;
}

/** The camera's page on the computer, or else on the phone as it is. */
export async function anyCameraPage(seat: Seat): Promise<string | undefined> {
  return (await cameraPage(seat, 'computer')) ?? (await cameraPage(seat, 'phone'));
}

/** From the line called gateway on the computer; from the label where it has none. */
export async function routerAddress(seat: Seat): Promise<string> {
  const { stdout } = await seat.run('computer', ['ip', '-4', 'route', 'show', 'default']);
  return /\bvia (\d[\d.]*)/.exec(stdout)?.[1] ?? (await labelledRouter(seat));
}

/** What stands on the label of the router that is there now, or in the note that came with it. */
export async function labelledRouter(seat: Seat): Promise<string> {
  const { stdout } = await seat.run('router', ['ip', '-4', '-o', 'addr', 'show', 'dev', ROUTER_LABEL.lan]);
  return /\binet (\d[\d.]*)/.exec(stdout)?.[1] ?? ROUTER_LABEL.address;
}

/** The address that is typed in the app and the browser, and stands in the notes of whoever put the camera up. */
export function usedAddress(): string {
  return CAMERA_NOTED;
}

/** The letters and digits on the label of the camera. */
export async function labelledMac(seat: Seat): Promise<string> {
  const { stdout } = await seat.run('camera', ['cat', '/sys/class/net/eth0/address']);
  return stdout.trim().toLowerCase();
}

export async function openApp(seat: Seat, phone: 'phone' | 'mobile' = 'phone'): Promise<AppScreen> {
  const screen = await seat.lab.app(phone);
  seat.saw(phone, 'opens the app', `${screen.shows}: ${screen.words}`);
  return screen;
}

/** Which network the phone is on, by the signs at its top and the name of the Wi-Fi. */
export async function networkOfPhone(seat: Seat): Promise<PhoneNetwork> {
  const { stdout } = await seat.run('phone', ['ip', '-o', 'link', 'show', 'dev', 'wlan0']);
  // Wi-Fi that is switched on is not given up where nothing answers on it.
  if (!/<[^>]*\bUP\b/.test(stdout)) return 'mobile';
  // The bridge that its radio hangs on is the Wi-Fi whose name the phone shows.
  const port = await seat.run('switch', ['ip', '-o', 'link', 'show', 'dev', 'p-phone']);
  return /\bmaster guest\b/.test(port.stdout) ? 'guest' : 'wifi';
}

/** Does something with the phone on another network, and brings it back to where it was. */
export async function onNetwork<T>(seat: Seat, network: PhoneNetwork, work: () => Promise<T>): Promise<T> {
  const before = await networkOfPhone(seat);
  if (before === network) return work();
  const servers = await serversOfPhone(seat);
  await seat.lab.phoneTo(network);
  seat.saw('phone', `goes to ${network}`, '');
  try {
    return await work();
  } finally {
    await seat.lab.phoneTo(before);
    // A name server that somebody typed in is there again, too; one that came with the lease comes with it.
    if (`${await serversOfPhone(seat)}` !== `${servers}`) seat.lab.resolv('phone', ...servers);
    seat.saw('phone', `goes back to ${before}`, '');
  }
}

async function serversOfPhone(seat: Seat): Promise<readonly string[]> {
  const { stdout } = await seat.run('phone', ['cat', '/etc/resolv.conf']);
  return [...stdout.matchAll(/^nameserver (\S+)/gm)].map(([, server = '']) => server);
}

/** Who answered pings: only replies from the address itself count. Shares in per cent. */
export async function lostPings(
  seat: Seat,
  host: Host,
  address: string,
  count: number,
  gap: number,
): Promise<number> {
  const argv = ['ping', '-n', '-c', `${count}`, '-i', `${gap}`, '-W', '1', address];
  const { stdout } = await seat.run(host, argv, 3000 + count * gap * 1000 + 1000);
  const seen = new Set<string>();
  for (const [, from, number] of stdout.matchAll(/bytes from ([\d.]+): icmp_seq=(\d+)/g))
    if (from === address && number !== undefined) seen.add(number);
  return Math.round((100 * (count - Math.min(count, seen.size))) / count);
}

/** Whether anything answers for an address on the wire of the computer. */
export async function answersByWire(seat: Seat, address: string): Promise<readonly string[]> {
  const argv = ['arping', '-c', '2', '-w', '2', '-I', 'eth0', address];
  const { stdout } = await seat.run('computer', argv, 4000);
  const macs = [...stdout.matchAll(/\[([0-9A-Fa-f:]{17})\]/g)].map(([, mac = '']) => mac.toLowerCase());
  return [...new Set(macs)];
}
