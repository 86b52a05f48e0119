import type { Lab, Story } from '../types.js';
import { GOOD, typeOnCamera } from './camera-settings.js';
import { fault, once, type SiteFault } from './fault.js';
import { withPublicNames } from './traits.js';

const NEW: Story = { everWorked: true, changed: 'settings', when: 'weeks' };
const SETTINGS: Story = { everWorked: true, changed: 'settings', when: 'today' };

/** Faults of the line called gateway. All show on the camera's own page, and all are mended by typing the right one. */
export const GATEWAY: readonly SiteFault[] = [
  fault({
    id: 'gateway-empty',
    causes: ['gateway-blank'],
    title: 'The gateway line of the camera is empty',
    breaks: 'mobile',
    realism: 'real',
    story: NEW,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { gateway: undefined }),
  }),
  fault({
    id: 'gateway-outside-onlink',
    causes: ['gateway-outside-subnet'],
    title: 'The gateway lies in another subnet; the camera takes it and asks for it in vain',
    breaks: 'mobile',
    realism: 'real',
    story: NEW,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { gateway: '172.23.99.1', onlink: true }),
  }),
  fault({
    id: 'gateway-outside-next-door',
    causes: ['gateway-outside-subnet'],
    title: "The gateway is the router's address for guests, which lies in another range; the camera takes it",
    breaks: 'mobile',
    realism: 'real',
    story: SETTINGS,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { gateway: '172.23.41.1', onlink: true }),
  }),
  fault({
    id: 'gateway-nobody',
    causes: ['gateway-not-router'],
    title: 'The gateway is an address of the right range that nobody has',
    breaks: 'mobile',
    realism: 'real',
    story: SETTINGS,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { gateway: '172.23.40.254' }),
  }),
  fault({
    id: 'gateway-another-device',
    causes: ['gateway-not-router'],
    title: 'The gateway is another device of the site, which passes nothing on',
    breaks: 'mobile',
    realism: 'real',
    story: NEW,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: async (lab) => {
      await lab.ip('twin', 'addr add 172.23.40.10/24 dev eth0\nlink set eth0 up\n');
      const back = await typeOnCamera(lab, { gateway: '172.23.40.10' });
      return async () => {
        await back();
        await lab.run('twin', ['ip', 'addr', 'del', '172.23.40.10/24', 'dev', 'eth0']);
      };
    },
  }),
  fault({
    id: 'gateway-own',
    causes: ['gateway-own-address'],
    title: "The gateway is the camera's own address",
    breaks: 'mobile',
    realism: 'real',
    story: NEW,
    mends: ['correct-gateway', 'new-address-in-range'],
    make: (lab) => typeOnCamera(lab, { gateway: '172.23.40.21' }),
  }),
  fault({
    id: 'gateway-second-router',
    causes: ['second-router-no-internet'],
    title: 'The gateway is a second router, whose own line is dead',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'new-device', when: 'days' },
    mends: ['correct-gateway', 'new-address-in-range'],
    plain: { 'second-router-there': true },
    make: async (lab) => {
      await lab.ip('twin', 'addr add 172.23.40.2/24 dev eth0\nlink set eth0 up\n');
      await lab.run('twin', ['sysctl', '-qw', 'net.ipv4.ip_forward=1']);
      const back = await typeOnCamera(lab, { gateway: '172.23.40.2' });
      return async () => {
        await back();
        await lab.run('twin', ['sysctl', '-qw', 'net.ipv4.ip_forward=0']);
        await lab.run('twin', ['ip', 'addr', 'del', '172.23.40.2/24', 'dev', 'eth0']);
      };
    },
  }),
  fault({
    id: 'router-moved',
    causes: ['gateway-moved'],
    title: "The router's own address was changed; the camera's gateway is still the old one",
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['correct-gateway', 'new-address-in-range'],
    make: moveRouter,
  }),
];

/** The router stays at its new address when the camera has learnt it, until the lab is restored. */
async function moveRouter(lab: Lab): Promise<() => Promise<void>> {
  const renew = async () => {
    await lab.dhcp('computer');
    await lab.dhcp('phone');
  };
  await withPublicNames(lab);
  await lab.ip('router', 'addr flush dev lan0\naddr add 172.23.40.254/24 brd + dev lan0\n');
  await renew();
  lab.defer(
    once(async () => {
      await lab.ip('router', 'addr flush dev lan0\naddr add 172.23.40.1/24 brd + dev lan0\n');
      await renew();
      await typeOnCamera(lab, GOOD);
    }),
  );
  return async () => {
    await typeOnCamera(lab, { gateway: '172.23.40.254' });
  };
}
