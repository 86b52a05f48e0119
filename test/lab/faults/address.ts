import { program } from '../site/homes.js';
import type { Lab } from '../types.js';
import { GOOD, typeOnCamera } from './camera-settings.js';
import { claim } from './claims.js';
import { handOut, range, SELF_GIVEN } from './dhcp.js';
import { fault, once, type SiteFault, type Undo } from './fault.js';
import { JUST_SO, MAC, NEVER, since } from './stories.js';
import { withPublicNames } from './traits.js';

const AUTOMATIC = { 'address-set-by': 'automatic' } as const;

/** Faults of addresses and masks. */
export const ADDRESS: readonly SiteFault[] = [
  fault({
    id: 'mask-hides-computers',
    causes: ['mask-wrong'],
    title: "The camera's mask ends before the computers' addresses: they ask, and its answers go astray",
    breaks: 'computer',
    realism: 'real',
    story: since('settings'),
    mends: ['new-address-in-range'],
    make: async (lab) => {
      const moved = await computerAt(lab, '172.23.40.184/24');
      const back = await typeOnCamera(lab, { address: '172.23.40.21/25' });
      return async () => {
        await back();
        await moved();
      };
    },
  }),
  fault({
    id: 'mask-cuts-router-off',
    causes: ['mask-wrong'],
    title: "The camera's mask is so narrow that the router lies outside; the camera asks for nobody",
    breaks: 'both',
    realism: 'real',
    story: NEVER,
    mends: ['new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { address: '172.23.40.21/29' }),
  }),
  fault({
    id: 'address-of-all',
    causes: ['address-not-a-host'],
    title: "The camera's address is the one that stands for all of the network",
    breaks: 'both',
    realism: 'real',
    story: NEVER,
    mends: ['new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { address: '172.23.40.255/24' }),
  }),
  fault({
    id: 'router-swapped',
    causes: ['old-range-after-router-swap'],
    title: "A new router uses another range; the camera's typed-in address is of the old one",
    breaks: 'both',
    realism: 'real',
    story: since('router', 'today'),
    mends: ['new-address-in-range', 'old-range-back'],
    make: swapRouter,
  }),
  fault({
    id: 'camera-from-another-house',
    causes: ['old-range-after-router-swap'],
    title: 'The camera keeps the address of the network before; this router uses another range',
    breaks: 'both',
    realism: 'real',
    story: since('router', 'days'),
    mends: ['new-address-in-range', 'old-range-back'],
    make: async (lab) => {
      await withPublicNames(lab);
      return typeOnCamera(lab, { address: '10.77.5.21/24', gateway: '10.77.5.1' });
    },
  }),
  fault({
    id: 'another-device-has-address',
    causes: ['address-taken-twice'],
    title: "Another device was given the camera's address by hand, and says so all the time",
    breaks: 'both',
    realism: 'real',
    isSlow: true,
    story: since('new-device'),
    mends: ['free-the-address', 'new-address-in-range'],
    make: (lab) => twinAt(lab, '172.23.40.21/24'),
  }),
  fault({
    id: 'address-handed-to-other',
    causes: ['static-inside-dhcp-range'],
    title:
      "The camera's typed-in address lies in the router's range, and the router gave it to another device",
    breaks: 'both',
    realism: 'real',
    isSlow: true,
    story: since('nothing', 'days'),
    mends: ['reserve-address', 'free-the-address', 'new-address-in-range'],
    make: async (lab) => {
      const pool = await handOut(
        lab,
        (page) => `${range(page, '172.23.40.20', '172.23.40.199')}dhcp-host=${MAC.twin},172.23.40.21\n`,
      );
      const leased = await lab.dhcp('twin');
      if (!leased.stdout.includes('172.23.40.21'))
        throw new Error(`not given: ${leased.stdout}${leased.stderr}`);
      const twin = await twinAt(lab);
      // The router writes into its table of neighbours to whom it gave an address, as some do.
      const held = '172.23.40.21 dev lan0';
      await lab.ip('router', `neigh replace ${held} lladdr ${MAC.twin} nud permanent\n`);
      return async () => {
        await lab.ip('router', `neigh del ${held}\n`);
        await twin();
        await pool();
      };
    },
  }),
  fault({
    id: 'several-new-at-one',
    causes: ['several-at-one-default'],
    title: 'Two new cameras still have the one address they came with',
    breaks: 'both',
    realism: 'real',
    isSlow: true,
    story: NEVER,
    mends: ['one-by-one-address', 'new-address-in-range'],
    plain: { 'new-ones-together': true },
    make: (lab) => twinAt(lab, '172.23.40.21/24'),
  }),
  fault({
    id: 'no-answer-at-start',
    causes: ['no-address-given'],
    title: 'After a power cut the camera was up before the router, got no address and gave itself one',
    breaks: 'both',
    realism: 'variant',
    story: since('power-cut', 'today'),
    mends: [
      'fetch-address',
      'restart-camera',
      'long-power-break',
      'reseat-lead',
      'known-good-lead',
      'other-port',
    ],
    plain: AUTOMATIC,
    make: (lab) => typeOnCamera(lab, SELF_GIVEN),
  }),
  fault({
    id: 'router-has-none-left',
    causes: ['dhcp-used-up'],
    title: 'All addresses that the router may hand out are taken; the camera got none',
    breaks: 'both',
    realism: 'variant',
    story: JUST_SO,
    mends: ['free-addresses'],
    plain: { ...AUTOMATIC, 'hand-out-full': true },
    make: async (lab) => {
      const pool = await handOut(lab, (page) => range(page, '172.23.40.100', '172.23.40.101'));
      await lab.dhcp('computer');
      await lab.dhcp('phone');
      const back = await typeOnCamera(lab, SELF_GIVEN);
      return async () => {
        await back();
        await pool();
        await lab.dhcp('computer');
        await lab.dhcp('phone');
      };
    },
  }),
  fault({
    id: 'second-router-hands-out',
    causes: ['second-dhcp-server'],
    title: 'A second router on the same switch hands out another range; the camera took an address of it',
    breaks: 'both',
    realism: 'variant',
    story: since('new-device', 'today'),
    mends: ['unplug-second-router'],
    plain: { ...AUTOMATIC, 'second-router-there': true },
    make: async (lab) => {
      await lab.ip('twin', 'addr flush dev eth0\naddr add 10.77.5.1/24 brd + dev eth0\n');
      lab.daemon('second-router', 'twin', [
        ...['dnsmasq', '-k', '-C', '/dev/null', '--pid-file=', '--user=root', '--no-hosts', '--no-resolv'],
        // It answers the camera's letters and digits alone, so that only the camera has strayed.
        ...['--dhcp-range=10.77.5.100,10.77.5.120,255.255.255.0,1h', `--dhcp-host=${MAC.camera},10.77.5.101`],
        ...[
          '--dhcp-ignore=tag:!known',
          '--dhcp-leasefile=/dev/null',
          '--interface=eth0',
          '--bind-interfaces',
        ],
      ]);
      const back = await typeOnCamera(lab, {
        address: '10.77.5.101/24',
        gateway: '10.77.5.1',
        dns: ['10.77.5.1'],
      });
      return async () => {
        await lab.stop('second-router');
        await lab.run('twin', ['ip', 'addr', 'flush', 'dev', 'eth0']);
        await back();
      };
    },
  }),
];

/** The twin with its own page, at an address, announcing it again and again (RFC 5227: a device that does not yield). */
async function twinAt(lab: Lab, address?: string): Promise<Undo> {
  if (address !== undefined) await lab.ip('twin', `addr add ${address} brd + dev eth0\n`);
  lab.daemon('twin', 'twin', program('camera'));
  await lab.listening('twin', 80);
  const quiet = await claim(lab, '172.23.40.21');
  return async () => {
    await quiet();
    await lab.stop('twin');
    await lab.ip('twin', 'addr flush dev eth0\nneigh flush all\n');
    await lab.run('camera', ['arping', '-q', '-U', '-c', '2', '-w', '2', '-I', 'eth0', '172.23.40.21']);
  };
}

/** The computer takes another address of the range, as its next lease might be. */
async function computerAt(lab: Lab, address: string): Promise<Undo> {
  await lab.ip(
    'computer',
    `addr flush dev eth0\naddr add ${address} brd + dev eth0\nroute replace default via 172.23.40.1\n`,
  );
  return async () => {
    await lab.dhcp('computer');
  };
}

/** The new router's range stays when the camera has been given an address in it, until the lab is restored. */
async function swapRouter(lab: Lab): Promise<Undo> {
  const range40 = 'addr flush dev lan0\naddr add 172.23.40.1/24 brd + dev lan0\n';
  await withPublicNames(lab);
  const oldPage = await handOut(lab, (page) => page.replaceAll('172.23.40.', '172.23.88.'));
  await lab.ip('router', 'addr flush dev lan0\naddr add 172.23.88.1/24 brd + dev lan0\n');
  const renew = async () => {
    await lab.dhcp('computer');
    await lab.dhcp('phone');
  };
  await renew();
  lab.defer(
    once(async () => {
      await lab.ip('router', range40);
      await oldPage();
      await renew();
      await typeOnCamera(lab, GOOD);
    }),
  );
  return async () => {
    await typeOnCamera(lab, { address: '172.23.88.21/24', gateway: '172.23.88.1' });
  };
}
