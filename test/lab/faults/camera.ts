import { program } from '../site/homes.js';
import type { Lab } from '../types.js';
import { cameraAnew } from './clock.js';
import { fault, type SiteFault } from './fault.js';
import { holding, homeOf, setInService } from './homes.js';
import { startPage } from './pages.js';
import { JUST_SO, NEVER, since } from './stories.js';
import { linkDown } from './walls.js';

const FIRST_PAGE = 'Yard camera - status. First set-up: choose a first password for this camera.';

/** Faults of the camera itself. It has a plug of its own, so that only what takes its power away restarts it. */
export const CAMERA: readonly SiteFault[] = [
  fault({
    id: 'camera-stands-still',
    causes: ['camera-hung'],
    title: 'The camera has hung: its socket shows a light and it answers a ping, but nothing else',
    breaks: 'both',
    realism: 'real',
    story: JUST_SO,
    mends: ['restart-camera', 'long-power-break', 'fetch-address'],
    plain: { 'fed-by': 'plug', 'camera-lights': 'alive' },
    make: async (lab) => {
      await halt(lab);
      return () => lab.restart('camera');
    },
  }),
  fault({
    id: 'camera-mute-and-still',
    causes: ['camera-hung'],
    title: 'The camera has hung: its socket shows a light, but it answers nothing at all',
    breaks: 'both',
    realism: 'variant',
    story: since('not-known', 'today'),
    mends: ['restart-camera', 'long-power-break', 'fetch-address'],
    plain: { 'fed-by': 'plug', 'camera-lights': 'alive' },
    make: async (lab) => {
      await halt(lab);
      await lab.nft(
        'camera',
        'table inet still {\nchain in {\ntype filter hook input priority -30;\ndrop\n}\n}\n',
      );
      await lab.nft(
        'camera',
        'table arp still {\nchain in {\ntype filter hook input priority 0;\ndrop\n}\n}\n',
      );
      return async () => {
        await lab.nft('camera', 'delete table inet still\ndelete table arp still\n');
        await lab.restart('camera');
      };
    },
  }),
  fault({
    id: 'camera-starts-over',
    causes: ['restart-loop'],
    title: 'The camera starts, runs for a moment and starts again, since an update went wrong',
    breaks: 'both',
    realism: 'real',
    story: since('firmware', 'today'),
    mends: ['long-power-break', 'swap-camera'],
    plain: { 'camera-lights': 'restarting', 'fed-by': 'plug', 'spare-camera-try': true },
    make: async (lab) => {
      await lab.stop('camera');
      const start = program('camera').join(' ');
      const round = `cd '${homeOf(lab, 'camera')}' && for i in $(seq 600); do timeout -s KILL 0.4 ${start}; sleep 1.6; done`;
      lab.daemon('camera-loop', 'camera', ['sh', '-c', round]);
      return async () => {
        await lab.stop('camera-loop');
        await cameraAnew(lab);
      };
    },
  }),
  fault({
    id: 'camera-broken',
    causes: ['camera-dead'],
    title: 'The camera has failed; its supply and its lead are good',
    breaks: 'both',
    realism: 'told',
    story: since('storm', 'days'),
    mends: ['swap-camera', 'swap-after-surge'],
    plain: {
      'camera-lights': 'dead',
      'fed-by': 'plug',
      'feeding-plug': 'lit',
      'spare-camera-try': true,
      'short-lead-try': false,
      'swapped-leads': 'both',
      'lead-look': false,
    },
    make: (lab) => dark(lab),
  }),
  fault({
    id: 'camera-unplugged',
    causes: ['supply-off'],
    title: "The camera's power plug is out",
    breaks: 'both',
    realism: 'told',
    story: JUST_SO,
    mends: ['plug-in-supply', 'restart-camera', 'long-power-break', 'bypass-timer'],
    plain: {
      'camera-lights': 'dead',
      'fed-by': 'plug',
      'feeding-plug': 'unplugged',
      'other-things-dark': 'on',
    },
    make: (lab) => dark(lab),
  }),
  fault({
    id: 'camera-new-no-password',
    causes: ['never-set-up'],
    title: 'The camera is new and waits for its first password',
    breaks: 'both',
    realism: 'variant',
    story: NEVER,
    mends: ['first-setup'],
    make: async (lab) => {
      const account = setInService(lab, { accounts: holding(lab, []) });
      const page = await firstPage(lab);
      return async () => {
        await page();
        await account();
      };
    },
  }),
  fault({
    id: 'camera-at-factory-settings',
    causes: ['camera-reset'],
    title: 'Somebody pressed the small button: the camera waits for its first password again',
    breaks: 'both',
    realism: 'variant',
    story: since('not-known', 'today'),
    mends: ['first-setup'],
    make: firstPage,
  }),
];

/** Its program stands still: the process that the lab wrote down for it. */
async function halt(lab: Lab): Promise<void> {
  const { code, stderr } = await lab.run('camera', ['sh', '-c', 'kill -STOP "$(cat camera.pid)"']);
  if (code !== 0) throw new Error(`the camera goes on: ${stderr}`);
}

async function dark(lab: Lab): Promise<() => Promise<void>> {
  await lab.stop('camera');
  const lead = await linkDown(lab, 'switch', 'p-camera');
  return async () => {
    await lead();
    await cameraAnew(lab);
  };
}

async function firstPage(lab: Lab): Promise<() => Promise<void>> {
  await lab.stop('camera');
  const page = await startPage(lab, 'camera', 80, FIRST_PAGE);
  return async () => {
    await page();
    await cameraAnew(lab);
  };
}
