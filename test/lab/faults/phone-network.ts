import { fault, type SiteFault } from './fault.js';
import { typeInApps } from './opened-way.js';
import { startPage } from './pages.js';
import { JUST_SO, since } from './stories.js';
import { withIpv6Only, withOpenedWay, withoutRelay } from './traits.js';
import { forwardWall, linkDown, outputWall, slow, turnAway } from './walls.js';

/** The phone with the fault is the one that is always on mobile data; the other, on Wi-Fi, is well. */
const AWAY = { 'phone-access': 'only-wifi' } as const;

/** Faults of the phone away from home, and of its mobile network; and of what its system forbids the app. */
export const PHONE_NETWORK: readonly SiteFault[] = [
  fault({
    id: 'phone-out-of-reach',
    causes: ['no-coverage'],
    title: 'The phone has no signal',
    breaks: 'mobile',
    realism: 'variant',
    story: JUST_SO,
    mends: ['signal-elsewhere'],
    plain: { ...AWAY, 'phone-bars': 'none' },
    make: (lab) => linkDown(lab, 'carrier', 'c-mobile'),
  }),
  fault({
    id: 'phone-data-used-up',
    causes: ['phone-bundle-used-up'],
    title: "The phone's data is used up; only the firm's own page opens",
    breaks: 'mobile',
    realism: 'real',
    story: JUST_SO,
    mends: ['top-up-phone'],
    plain: { ...AWAY, 'phone-bars': 'bars' },
    make: async (lab) => {
      const mine = 'ip saddr 100.72.0.11';
      const page = await startPage(lab, 'carrier', 8083, 'Your data is used up. Please top up.');
      const away = await turnAway(lab, 'carrier', `${mine} tcp dport 80 redirect to :8083`);
      const shut = await forwardWall(lab, 'carrier', `${mine} udp dport 53 accept`, `${mine} drop`);
      return async () => {
        await shut();
        await away();
        await page();
      };
    },
  }),
  fault({
    id: 'phone-app-kept-from-data',
    causes: ['phone-data-or-permission'],
    title: "The phone's settings keep the app from mobile data; the browser may use it",
    breaks: 'mobile',
    realism: 'real',
    story: since('phone'),
    mends: ['allow-mobile-data'],
    plain: { ...AWAY, 'app-may-use-mobile': false, 'phone-bars': 'bars' },
    make: (lab) => outputWall(lab, 'mobile', 'oifname "wwan0" meta l4proto { tcp, udp } th dport 443 drop'),
  }),
  fault({
    id: 'phone-ad-blocker',
    causes: ['phone-vpn-or-blocker'],
    title: 'A blocker on the phone gives the app no address for its service',
    breaks: 'mobile',
    realism: 'real',
    story: since('phone'),
    mends: ['vpn-off'],
    plain: { ...AWAY, 'vpn-mark': true, 'phone-bars': 'bars' },
    make: async (lab) => {
      lab.daemon('blocker', 'mobile', [
        ...['dnsmasq', '-k', '-C', '/dev/null', '--pid-file=', '--no-hosts', '--no-resolv', '--user=root'],
        ...['--listen-address=127.0.0.1', '--bind-interfaces', '--port=53'],
        ...['--server=203.0.113.53', '--address=/rendezvous.example/'],
      ]);
      await lab.listening('mobile', 53);
      lab.resolv('mobile', '127.0.0.1');
      return async () => {
        lab.resolv('mobile', '203.0.113.53');
        await lab.stop('blocker');
      };
    },
  }),
  fault({
    id: 'phone-tunnel-to-nowhere',
    causes: ['phone-vpn-or-blocker'],
    title: 'A tunnel on the phone takes everything that is sent, and its other end is gone',
    breaks: 'mobile',
    realism: 'real',
    story: since('phone', 'today'),
    mends: ['vpn-off'],
    plain: { ...AWAY, 'vpn-mark': true, 'phone-bars': 'bars' },
    make: async (lab) => {
      await lab.ip(
        'mobile',
        [
          'link add name tunnel0 type veth peer name tunnel1',
          'addr add 10.77.9.2/24 dev tunnel0',
          'link set tunnel1 up',
          'link set tunnel0 up',
          'route add 0.0.0.0/1 via 10.77.9.1 dev tunnel0',
          'route add 128.0.0.0/1 via 10.77.9.1 dev tunnel0',
          '',
        ].join('\n'),
      );
      return () => lab.ip('mobile', 'link del tunnel0\n');
    },
  }),
  fault({
    id: 'operator-drops-picture',
    causes: ['operator-blocks-way'],
    title: "The phone's mobile firm drops UDP, and the service passes no picture on itself",
    breaks: 'mobile',
    realism: 'real',
    story: since('provider', 'weeks'),
    mends: ['ask-mobile-firm'],
    plain: { ...AWAY, 'other-phones-on-mobile': 'other-firm', 'phone-bars': 'bars', 'far-wifi-try': 'comes' },
    make: async (lab) => {
      await withoutRelay(lab);
      return forwardWall(lab, 'carrier', 'meta l4proto udp th dport != 53 iifname "in0" drop');
    },
  }),
  fault({
    id: 'phone-network-thin',
    causes: ['phone-too-slow'],
    title: "The phone's mobile network takes a sixth of what the picture needs",
    breaks: 'mobile',
    realism: 'real',
    story: JUST_SO,
    mends: ['sub-stream', 'lighten-low-picture'],
    plain: { ...AWAY, 'phone-bars': 'bars', 'low-quality-try': true, 'far-wifi-try': 'comes' },
    make: (lab) => slow(lab, 'carrier', 'c-mobile', 256),
  }),
  fault({
    id: 'phone-ipv6-only-numbers',
    causes: ['ipv6-only-phone'],
    title: 'The app leads to a way opened in the router by numbers, and the mobile firm gives IPv6 only',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'nothing', when: 'days' },
    mends: ['name-for-numbers', 'ask-mobile-firm', 'replace-forwarding'],
    plain: { 'far-wifi-try': 'comes' },
    make: async (lab) => {
      await withOpenedWay(lab);
      await withIpv6Only(lab);
      return async () => {
        typeInApps(lab, 'name');
      };
    },
  }),
  fault({
    id: 'app-kept-from-local-network',
    causes: ['local-network-permission'],
    title: 'The phone does not let the app use the local network',
    breaks: 'wifi',
    realism: 'real',
    story: since('phone'),
    mends: ['allow-mobile-data'],
    plain: { 'app-may-use-local': 'refused', 'phone-access': 'only-mobile' },
    make: async (lab) => {
      await withoutRelay(lab);
      return outputWall(lab, 'phone', 'oifname "wlan0" ip daddr 172.23.40.21 tcp dport { 80, 554 } reject');
    },
  }),
];
