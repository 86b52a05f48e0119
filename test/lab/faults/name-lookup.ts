import { typeOnCamera } from './camera-settings.js';
import { fault, type SiteFault } from './fault.js';
import { forwardWall, turnAway } from './walls.js';

/** Faults of finding the service by its name. */
export const NAME_LOOKUP: readonly SiteFault[] = [
  fault({
    id: 'dns-of-old-network',
    causes: ['dns-dead'],
    title: 'The name server on the camera is the one of the network it came from',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['correct-dns'],
    make: (lab) => typeOnCamera(lab, { dns: ['10.77.5.1'] }),
  }),
  fault({
    id: 'dns-empty',
    causes: ['dns-dead'],
    title: 'The name server line of the camera is empty',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['correct-dns'],
    make: (lab) => typeOnCamera(lab, { dns: [] }),
  }),
  fault({
    id: 'dns-nobody-on-site',
    causes: ['dns-dead'],
    title: 'The name server on the camera is an address of the site that nobody has',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['correct-dns'],
    make: (lab) => typeOnCamera(lab, { dns: ['172.23.40.253'] }),
  }),
  fault({
    id: 'dns-deaf-device',
    causes: ['dns-dead'],
    title: 'The name server on the camera is a device that knows no names',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'weeks' },
    mends: ['correct-dns'],
    make: async (lab) => {
      await lab.ip('twin', 'addr add 172.23.40.10/24 dev eth0\nlink set eth0 up\n');
      const back = await typeOnCamera(lab, { dns: ['172.23.40.10'] });
      return async () => {
        await back();
        await lab.run('twin', ['ip', 'addr', 'del', '172.23.40.10/24', 'dev', 'eth0']);
      };
    },
  }),
  fault({
    id: 'dns-public-held-back',
    causes: ['dns-public-blocked'],
    title: 'The camera asks a public name server, and the router lets no such question out',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['correct-dns'],
    make: async (lab) => {
      const open = await forwardWall(lab, 'router', 'meta l4proto { tcp, udp } th dport 53 drop');
      const back = await typeOnCamera(lab, { dns: ['203.0.113.53'] });
      return async () => {
        await back();
        await open();
      };
    },
  }),
  fault({
    id: 'dns-filter-on-camera',
    causes: ['dns-filtered'],
    title: "A child lock answers the camera's questions for its service with 'no such name'",
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['filter-off'],
    plain: { 'blocked-mark': 'filter' },
    make: async (lab) => {
      lab.daemon('name-filter', 'router', [
        'dnsmasq',
        '--keep-in-foreground',
        '--conf-file=/dev/null',
        '--pid-file=',
        '--no-hosts',
        '--no-resolv',
        '--port=5353',
        '--address=/example/',
      ]);
      await lab.listening('router', 5353);
      const open = await turnAway(
        lab,
        'router',
        'ip saddr 172.23.40.21 udp dport 53 redirect to :5353',
        'ip saddr 172.23.40.21 tcp dport 53 redirect to :5353',
      );
      return async () => {
        await open();
        await lab.stop('name-filter');
      };
    },
  }),
];
