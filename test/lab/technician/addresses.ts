import { type Answer, always, CANT_TELL, type Eye, type Eyes, pasted, type Seat, value } from './eye.js';
import { anyCameraPage, cameraPage, labelledRouter, usedAddress } from './hands.js';
import { phoneOfCall } from './phones.js';
import { openRouter } from './router-page.js';
import { maskOf, numberOf, row } from './rows.js';

/** The network details of the computer, copied whole. */
async function computerText(seat: Seat): Promise<string> {
  const asked = [
    ['ip', 'addr'],
    ['ip', 'route'],
    ['cat', '/etc/resolv.conf'],
  ];
  const shown: string[] = [];
  for (const argv of asked) shown.push((await seat.run('computer', argv)).stdout.trimEnd());
  return `${shown.filter((text) => text !== '').join('\n\n')}\n`;
}

async function addressOfComputer(seat: Seat): Promise<{ address: string; mask: string } | undefined> {
  const { stdout } = await seat.run('computer', ['ip', '-4', '-o', 'addr', 'show', 'dev', 'eth0']);
  const [, address, prefix] = /\binet ([\d.]+)\/(\d+)/.exec(stdout) ?? [];
  return address === undefined ? undefined : { address, mask: maskOf(Number(prefix)) };
}

/** A computer without an address has nothing to read out but an empty line. */
const ofComputer: Eye = async (seat) => {
  const text = await computerText(seat);
  return (await addressOfComputer(seat)) === undefined ? CANT_TELL : pasted(text, 'this-computer');
};

/** A line of the camera's page: the whole page is copied, unless just that line is empty. */
function cameraLine(word: string, elsewhere: Answer): Eye {
  return async (seat) => {
    const page = await anyCameraPage(seat);
    if (page === undefined) return elsewhere;
    return row(page, word) === 'not set' ? value('0.0.0.0') : pasted(page, 'camera');
  };
}

async function sameOnBoth(
  seat: Seat,
  word: string,
  other: (page: string) => Promise<string | undefined>,
): Promise<Answer> {
  const page = await anyCameraPage(seat);
  const own = page === undefined ? undefined : row(page, word);
  if (page === undefined || own === undefined) return CANT_TELL;
  const compared = await other(page);
  return compared === undefined ? CANT_TELL : value(own === compared);
}

/** Addresses of the computer, the camera and the router, and comparing them. */
export const ADDRESS_EYES: Eyes = {
  'camera-address': cameraLine('IP address', value(usedAddress())),
  'camera-mask': cameraLine('Subnet mask', CANT_TELL),
  'camera-gateway': cameraLine('Default gateway', CANT_TELL),
  'camera-dns': cameraLine('DNS servers', CANT_TELL),
  // This camera knows no other way.
  'address-set-by': always('fixed'),
  'computer-address': ofComputer,
  'computer-mask': ofComputer,
  'computer-by-hand': async (seat) => {
    const own = await addressOfComputer(seat);
    if (own === undefined || own.address.startsWith('169.254.')) return value(false);
    const page = await openRouter(seat);
    const [, first, last] = /([\d.]+) to ([\d.]+)/.exec(row(page ?? '', 'Address range') ?? '') ?? [];
    const [at, low, high] = [own.address, first, last].map(numberOf);
    const isGiven = at !== undefined && low !== undefined && high !== undefined && at >= low && at <= high;
    // Out of the range somebody typed it, or another box gave it: the page of a computer tells, this one does not.
    return isGiven ? value(false) : CANT_TELL;
  },
  'router-address': async (seat) => {
    const text = await computerText(seat);
    return /^default via/m.test(text) ? pasted(text, 'this-computer') : value(await labelledRouter(seat));
  },
  'router-mask': async (seat) => {
    const mask = row((await openRouter(seat)) ?? '', 'Local subnet mask');
    return mask === undefined || mask === 'not set' ? CANT_TELL : value(mask);
  },
  'masks-compared': (seat) =>
    sameOnBoth(seat, 'Subnet mask', async () => (await addressOfComputer(seat))?.mask),
  'gateway-compared': (seat) => sameOnBoth(seat, 'Default gateway', () => labelledRouter(seat)),
  'phone-range-same': async (seat) => {
    if ((await phoneOfCall(seat)) === 'mobile') return CANT_TELL;
    const { stdout } = await seat.run('phone', ['ip', '-4', '-o', 'addr', 'show', 'dev', 'wlan0']);
    const [, own] = /\binet ([\d.]+)/.exec(stdout) ?? [];
    if (own === undefined) return CANT_TELL;
    const page = await cameraPage(seat, 'phone');
    const camera = row(page ?? '', 'IP address') ?? usedAddress();
    const three = (address: string): string => address.split('.').slice(0, 3).join('.');
    return value(three(own) === three(camera));
  },
};
