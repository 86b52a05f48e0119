import { always, CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { answersByWire, usedAddress } from './hands.js';

type Socket = Parameters<Seat['lab']['light']>[0];

async function light(seat: Seat, socket: Socket): Promise<'lit' | 'dark'> {
  const seen = await seat.lab.light(socket);
  seat.saw(socket === 'internet' ? 'router' : 'switch', `looks at the socket of ${socket}`, seen);
  return seen;
}

/** Sockets that flash without a rest pass on more frames a second than a quiet site ever has; judged, no source. */
const STORM = 400;

/** Lights at sockets, and what stands beside them. */
export const LIGHT_EYES: Eyes = {
  'port-light': async (seat) => {
    const own = await light(seat, 'camera');
    if (own === 'lit') return value('lit');
    const others = [await light(seat, 'computer'), await light(seat, 'router')];
    return value(others.includes('lit') ? 'dark' : 'all-dark');
  },
  'lead-to-router': async (seat) => value(await light(seat, 'router')),
  'router-lights': async (seat) => value((await light(seat, 'internet')) === 'lit' ? 'as-usual' : 'warning'),
  // A lit socket needs a lead that is in; of a dark one the scene says whether the lead can be seen to be out.
  'lead-look': async (seat) => ((await light(seat, 'camera')) === 'lit' ? value(false) : CANT_TELL),
  'socket-speed': async (seat) => ((await light(seat, 'camera')) === 'lit' ? value('full') : CANT_TELL),
  // A slide that stood wrong would keep neighbours apart.
  'slide-place': async (seat) =>
    (await answersByWire(seat, usedAddress())).length > 0 ? value('no-such') : CANT_TELL,
  'switch-flicker': async (seat) => {
    const before = await framesOut(seat);
    await new Promise((done) => setTimeout(done, 1000));
    const after = await framesOut(seat);
    const busy = [...after].filter(([port, frames]) => frames - (before.get(port) ?? frames) > STORM);
    return value(busy.length >= 2 && busy.length >= after.size / 2);
  },
  'speed-set': always(true),
};

/** What each lit socket has sent out so far: its light blinks with it. */
async function framesOut(seat: Seat): Promise<ReadonlyMap<string, number>> {
  const { stdout } = await seat.run('switch', ['ip', '-o', '-s', 'link', 'show', 'up']);
  const frames = new Map<string, number>();
  for (const line of stdout.split('\n')) {
    const [, port = ''] = /^\d+: (p-[^@:]+)[@:]/.exec(line) ?? [];
    const [, sent = ''] = /TX:[^\\]*\\\s+\d+\s+(\d+)/.exec(line) ?? [];
    if (port !== '' && sent !== '' && /\bLOWER_UP\b/.test(line)) frames.set(port, Number(sent));
  }
  return frames;
}
