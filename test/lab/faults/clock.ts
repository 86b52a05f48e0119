import { existsSync } from 'node:fs';
import { program } from '../site/homes.js';
import type { Lab } from '../types.js';
import { fault, type SiteFault, type Undo } from './fault.js';
import { setOnCamera } from './homes.js';
import { since } from './stories.js';
import { withoutPunching } from './traits.js';

const SHIFTED = '/usr/lib/x86_64-linux-gnu/faketime/libfaketime.so.1';

/** Faults of the camera's clock. The picture goes through the service, whose certificate the camera has to believe. */
export const CLOCK: readonly SiteFault[] = [
  fault({
    id: 'clock-years-back',
    causes: ['clock-off'],
    title: "The camera's clock stands years back, so it believes no certificate",
    breaks: 'mobile',
    realism: 'real',
    story: since('power-cut'),
    mends: ['set-clock', 'name-a-time-server'],
    plain: { 'clock-set-before': false },
    make: async (lab) => {
      await withoutPunching(lab);
      return clockShifted(lab, '-2000d');
    },
  }),
  fault({
    id: 'clock-years-ahead',
    causes: ['clock-off'],
    title: "The camera's clock stands years ahead, so every certificate has run out for it",
    breaks: 'mobile',
    realism: 'real',
    story: since('settings', 'today'),
    mends: ['set-clock', 'name-a-time-server'],
    plain: { 'clock-set-before': false },
    make: async (lab) => {
      await withoutPunching(lab);
      return clockShifted(lab, '+3000d');
    },
  }),
  fault({
    id: 'clock-without-server',
    causes: ['clock-not-kept'],
    title: 'The camera lost its time with the power, and its time server has a name that leads nowhere',
    breaks: 'mobile',
    realism: 'real',
    story: since('power-cut', 'today'),
    mends: ['name-a-time-server'],
    plain: { 'clock-set-before': true, 'time-test': 'failed' },
    make: async (lab) => {
      await withoutPunching(lab);
      const server = setOnCamera(lab, { timeServer: 'time-of-old.example' });
      const clock = await clockShifted(lab, '-2000d');
      return async () => {
        await server();
        await clock();
      };
    },
  }),
];

async function clockShifted(lab: Lab, by: string): Promise<Undo> {
  if (!existsSync(SHIFTED)) throw new Error(`a clock is set off by ${SHIFTED}; install faketime`);
  await lab.stop('camera');
  lab.daemon('camera', 'camera', program('camera'), {
    LD_PRELOAD: SHIFTED,
    FAKETIME: by,
    FAKETIME_DONT_FAKE_MONOTONIC: '1',
  });
  await lab.listening('camera', 80);
  return () => cameraAnew(lab);
}

/** The camera as it starts with a clock that is right. */
export async function cameraAnew(lab: Lab): Promise<void> {
  await lab.stop('camera');
  lab.daemon('camera', 'camera', program('camera'));
  await lab.listening('camera', 80);
}
