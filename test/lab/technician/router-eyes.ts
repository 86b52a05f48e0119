import { always, CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { answersByWire, anyCameraPage, labelledMac, openApp, usedAddress } from './hands.js';
import { deviceList, openRouter } from './router-page.js';
import { numberOf, row, rows } from './rows.js';

interface Range {
  readonly first: number;
  readonly last: number;
}

function rangeOn(page: string): Range | undefined {
  const [, low, high] = /([\d.]+) to ([\d.]+)/.exec(row(page, 'Address range') ?? '') ?? [];
  const [first, last] = [numberOf(low), numberOf(high)];
  return first === undefined || last === undefined ? undefined : { first, last };
}

function holds({ first, last }: Range, address: string | undefined): boolean {
  const at = numberOf(address);
  return at !== undefined && at >= first && at <= last;
}

/** Whether nothing on the camera's way is held up, as its own page and the app tell. */
async function runsFreely(seat: Seat): Promise<boolean> {
  const page = await anyCameraPage(seat);
  const words = ['Service name look-up', 'Service UDP keepalive', 'Service TCP secure connection'];
  if (page !== undefined) return words.every((word) => row(page, word) === 'ok');
  return (await openApp(seat, 'mobile')).shows === 'picture';
}

/** What stands on the router's page. Where it does not open, nobody can tell. */
export const ROUTER_EYES: Eyes = {
  'router-page': async (seat) => value((await openRouter(seat)) !== undefined),
  'router-list': async (seat) => {
    const list = await deviceList(seat);
    if (list === undefined) return CANT_TELL;
    const mac = await labelledMac(seat);
    return value(list.some((one) => one.mac === mac));
  },
  'address-in-list': async (seat) => {
    const list = await deviceList(seat);
    const mac = await labelledMac(seat);
    const own = list?.filter((one) => one.mac === mac) ?? [];
    return own.length === 0 ? CANT_TELL : value(own.some(({ address }) => address === usedAddress()));
  },
  'list-name-there': async (seat) => {
    const list = await deviceList(seat);
    if (list === undefined) return CANT_TELL;
    const mac = await labelledMac(seat);
    return value(list.some((one) => one.address === usedAddress() && one.mac !== mac));
  },
  'in-handed-out-range': async (seat) => {
    const range = rangeOn((await openRouter(seat)) ?? '');
    return range === undefined ? CANT_TELL : value(holds(range, usedAddress()));
  },
  'hand-out-full': async (seat) => {
    const page = (await openRouter(seat)) ?? '';
    const range = rangeOn(page);
    if (range === undefined) return CANT_TELL;
    const taken = new Set(rows(page, 'Device').map((line) => line.split(/\s+/)[0]));
    const inside = [...taken].filter((address) => holds(range, address));
    return value(inside.length >= range.last - range.first + 1);
  },
  'router-status': async (seat) => {
    const page = await openRouter(seat);
    if (page === undefined) return value('no-page');
    const socket = row(page, 'Internet socket');
    const address = row(page, 'Internet address');
    if (socket === undefined || address === undefined) return value('no-such');
    return value(socket === 'cable connected' && address !== 'not set' ? 'connected' : 'down');
  },
  'router-outside-address': async (seat) => {
    const address = row((await openRouter(seat)) ?? '', 'Internet address');
    if (address === undefined) return CANT_TELL;
    return value(address === 'not set' ? '0.0.0.0' : address);
  },
  // The page has no line for blocks and lists. Where all runs freely there are none; else the scene says what is seen.
  'blocked-mark': async (seat) => ((await runsFreely(seat)) ? value('none') : CANT_TELL),
  'let-in-list': async (seat) =>
    (await answersByWire(seat, usedAddress())).length > 0 ? value('none') : CANT_TELL,
  'band-on': always(true),
  'wifi-bars': always('strong'),
};
