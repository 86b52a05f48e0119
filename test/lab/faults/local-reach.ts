import { fault, type SiteFault } from './fault.js';
import { apart } from './link.js';
import { withoutRelay } from './traits.js';
import { inputWall, switchWall } from './walls.js';

/** Faults of reach on the site itself. */
export const LOCAL_REACH: readonly SiteFault[] = [
  fault({
    id: 'switch-knows-other-devices',
    causes: ['mac-filter-or-port-security'],
    title: "The switch lets known devices in, and the camera's letters and digits are not on its list",
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['let-camera-in', 'ask-network-keeper'],
    plain: { 'let-in-list': 'missing' },
    make: async (lab) => {
      const { stdout } = await lab.run('camera', ['cat', '/sys/class/net/eth0/address']);
      return switchWall(lab, `ether saddr ${stdout.trim()} drop`);
    },
  }),
  fault({
    id: 'socket-of-guest-network',
    causes: ['vlan-or-wrong-network'],
    title: "The camera's socket belongs to the network of the guests",
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'building-work', when: 'days' },
    mends: ['right-socket', 'other-port'],
    make: async (lab) => {
      await lab.ip('switch', 'link set p-camera master guest\n');
      return () => lab.ip('switch', 'link set p-camera master site\n');
    },
  }),
  fault({
    id: 'camera-keeps-computer-out',
    causes: ['camera-refuses-address'],
    title: "A list in the camera keeps this computer's address out",
    breaks: 'computer',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['let-device-in'],
    make: async (lab) => {
      const { stdout } = await lab.run('computer', ['ip', '-4', '-o', 'addr', 'show', 'eth0']);
      const address = /inet (\d+\.\d+\.\d+\.\d+)/.exec(stdout)?.[1];
      if (address === undefined) throw new Error(`the computer has no address: ${stdout}`);
      return inputWall(lab, 'camera', `ip saddr ${address} meta l4proto { tcp, udp } drop`);
    },
  }),
  fault({
    id: 'page-and-stream-stopped',
    causes: ['web-service-stopped'],
    title: 'The camera answers a ping, but its page and its stream refuse everybody',
    breaks: 'computer',
    realism: 'variant',
    story: { everWorked: true, changed: 'nothing', when: 'days' },
    mends: ['restart-camera', 'long-power-break', 'fetch-address'],
    plain: { 'fed-by': 'plug', 'camera-lights': 'alive' },
    make: (lab) => inputWall(lab, 'camera', 'tcp dport { 80, 443, 554 } reject with tcp reset'),
  }),
  fault({
    id: 'wifi-keeps-devices-apart',
    causes: ['guest-wifi-or-isolation'],
    title: 'The Wi-Fi keeps the phone from all other devices of the site',
    breaks: 'wifi',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['isolation-off'],
    make: async (lab) => {
      await withoutRelay(lab);
      return apart(lab, ['p-phone', 'p-camera']);
    },
  }),
  fault({
    id: 'phone-on-guest-wifi',
    causes: ['guest-wifi-or-isolation'],
    title: 'The phone has joined the Wi-Fi of the guests',
    breaks: 'wifi',
    realism: 'real',
    story: { everWorked: true, changed: 'phone', when: 'today' },
    mends: ['leave-guest-wifi'],
    make: async (lab) => {
      await withoutRelay(lab);
      await lab.phoneTo('guest');
      return () => lab.phoneTo('wifi');
    },
  }),
];
