import { CANT_TELL, type Eyes, type Seat, value } from './eye.js';
import { anyCameraPage } from './hands.js';
import { row } from './rows.js';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `2026-11-25 14:30:07 UTC` in seconds since 1970, or undefined. */
function secondsOf(shown: string | undefined): number | undefined {
  const [, date, time] = /^(\d{4}-\d\d-\d\d)[ T](\d\d:\d\d:\d\d)/.exec(shown ?? '') ?? [];
  return date === undefined ? undefined : Date.parse(`${date}T${time}Z`) / 1000;
}

/** As people read it out: `25 Nov 2026 14:30`. */
function readOut(seconds: number): string {
  const at = new Date(seconds * 1000);
  const two = (number: number): string => `${number}`.padStart(2, '0');
  const day = `${two(at.getUTCDate())} ${MONTHS[at.getUTCMonth()]} ${at.getUTCFullYear()}`;
  return `${day} ${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`;
}

async function cameraClock(seat: Seat): Promise<number | undefined> {
  return secondsOf(row((await anyCameraPage(seat)) ?? '', 'Clock'));
}

async function phoneClock(seat: Seat): Promise<number | undefined> {
  return secondsOf((await seat.run('phone', ['date', '-u', '+%F %T'])).stdout.trim());
}

/** How far the camera's clock is off, in seconds; undefined where it cannot be seen. */
async function secondsOff(seat: Seat): Promise<number | undefined> {
  const [camera, phone] = [await cameraClock(seat), await phoneClock(seat)];
  return camera === undefined || phone === undefined ? undefined : camera - phone;
}

/** Give or take a minute, and the time that reading takes. */
const NEAR = 90;

/** The clock that the camera shows, beside that of the phone. */
export const CLOCK_EYES: Eyes = {
  'camera-clock-reads': async (seat) => {
    const at = await cameraClock(seat);
    return at === undefined ? CANT_TELL : value(readOut(at));
  },
  'phone-clock-reads': async (seat) => {
    const at = await phoneClock(seat);
    return at === undefined ? CANT_TELL : value(readOut(at));
  },
  'camera-date': async (seat) => {
    const off = await secondsOff(seat);
    if (off === undefined) return CANT_TELL;
    if (Math.abs(off) <= NEAR) return value('right');
    const hours = Math.round(off / 3600);
    const isHours = hours !== 0 && Math.abs(off - hours * 3600) <= NEAR && Math.abs(hours) < 24;
    return value(isHours ? 'hour-off' : 'far-off');
  },
  'clock-set-before': async (seat) => {
    const off = await secondsOff(seat);
    return off !== undefined && Math.abs(off) <= NEAR ? value(false) : CANT_TELL;
  },
};
