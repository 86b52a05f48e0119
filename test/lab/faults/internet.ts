import { fault, type SiteFault } from './fault.js';
import { startPage } from './pages.js';
import { MAC } from './stories.js';
import { withoutPunching } from './traits.js';
import { forwardWall, lossy, slow, turnAway } from './walls.js';

const CAMERA = 'ip saddr 172.23.40.21';

/** Faults between the site and the internet. */
export const INTERNET: readonly SiteFault[] = [
  fault({
    id: 'provider-black-hole',
    causes: ['provider-down'],
    title: 'The provider passes nothing on',
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'nothing', when: 'today' },
    mends: ['call-provider'],
    make: (lab) => forwardWall(lab, 'provider', 'drop'),
  }),
  fault({
    id: 'provider-says-unreachable',
    causes: ['provider-down'],
    title: 'The provider has no way to the rest of the internet, and says so',
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'provider', when: 'today' },
    mends: ['call-provider'],
    plain: { 'provider-notice': true },
    make: (lab) => forwardWall(lab, 'provider', 'reject with icmpx type no-route'),
  }),
  fault({
    id: 'provider-one-way',
    causes: ['provider-down'],
    title: 'What goes out arrives; nothing comes back',
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'nothing', when: 'today' },
    mends: ['call-provider'],
    make: (lab) => forwardWall(lab, 'provider', 'oifname "in0" drop'),
  }),
  fault({
    id: 'line-in-street-dead',
    causes: ['provider-down'],
    title: 'The line behind the box at the wall is dead',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'storm', when: 'today' },
    mends: ['call-provider'],
    plain: { 'router-lights': 'warning' },
    make: (lab) => lossy(lab, 'box', 'out0', 100),
  }),
  fault({
    id: 'line-stopped-for-bill',
    causes: ['line-suspended'],
    title: "The provider has stopped the line and shows its own page in place of the web's",
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'nothing', when: 'days' },
    mends: ['open-the-line-again'],
    plain: { 'line-account': 'bill', 'internet-comes-by': 'line', 'site-web': 'firm-page' },
    make: async (lab) => {
      const page = await startPage(lab, 'provider', 8081, 'Your line is stopped: a bill is open.');
      const away = await turnAway(lab, 'provider', 'iifname "in0" tcp dport 80 redirect to :8081');
      const shut = await forwardWall(
        lab,
        'provider',
        'iifname "in0" udp dport 53 accept',
        'iifname "in0" drop',
      );
      return async () => {
        await shut();
        await away();
        await page();
      };
    },
  }),
  fault({
    id: 'sim-data-used-up',
    causes: ['data-bundle-used-up'],
    title: "The data of the site's SIM is used up; only the firm's own page opens",
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'nothing', when: 'today' },
    mends: ['top-up-data'],
    plain: { 'line-account': 'data', 'internet-comes-by': 'mobile', 'site-web': 'firm-page' },
    make: async (lab) => {
      const page = await startPage(lab, 'provider', 8081, 'Your data is used up.');
      const away = await turnAway(lab, 'provider', 'iifname "in0" tcp dport 80 redirect to :8081');
      const shut = await forwardWall(
        lab,
        'provider',
        'iifname "in0" udp dport 53 accept',
        'iifname "in0" drop',
      );
      return async () => {
        await shut();
        await away();
        await page();
      };
    },
  }),
  fault({
    id: 'sim-signal-weak',
    causes: ['weak-signal-at-router'],
    title: "Too little signal reaches the site's SIM router: slow, and much is lost",
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'nothing', when: 'weeks' },
    mends: ['router-to-window'],
    plain: { 'internet-comes-by': 'mobile', 'router-lights': 'warning' },
    make: async (lab) => {
      const wide = await slow(lab, 'router', 'wan0', 96, 900);
      const clear = await lossy(lab, 'box', 'out0', 60);
      return async () => {
        await clear();
        await wide();
      };
    },
  }),
  fault({
    id: 'router-passes-nothing-on',
    causes: ['router-hung'],
    title: 'The router has hung: it answers a ping, but passes nothing on and knows no names',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'nothing', when: 'today' },
    mends: ['restart-router'],
    make: async (lab) => {
      const undo = await forwardWall(lab, 'router', 'drop');
      const names = await turnAway(lab, 'router', 'meta l4proto { tcp, udp } th dport 53 redirect to :9');
      return async () => {
        await names();
        await undo();
        await lab.restart('router');
      };
    },
  }),
  fault({
    id: 'router-table-full',
    causes: ['router-hung'],
    title: 'The router has hung in part: no new connection gets out, a ping does',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'nothing', when: 'days' },
    mends: ['restart-router'],
    make: async (lab) => {
      const undo = await forwardWall(lab, 'router', 'meta l4proto { tcp, udp } ct state new drop');
      return async () => {
        await undo();
        await lab.restart('router');
      };
    },
  }),
  fault({
    id: 'sign-in-page-first',
    causes: ['captive-page'],
    title: 'The network of the place wants a sign-in on a web page; the phone has done it, the camera cannot',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['pass-captive-page'],
    plain: { 'site-web': 'sign-in-page' },
    make: async (lab) => {
      const page = await startPage(lab, 'router', 8082, 'Welcome. Please sign in to use this network.');
      const away = await turnAway(
        lab,
        'router',
        `ether saddr { ${MAC.camera}, ${MAC.computer} } ip daddr != 172.23.40.1 tcp dport 80 redirect to :8082`,
      );
      const shut = await forwardWall(
        lab,
        'router',
        `${CAMERA} drop`,
        `ether saddr ${MAC.computer} tcp dport 443 reject with tcp reset`,
      );
      return async () => {
        await shut();
        await away();
        await page();
      };
    },
  }),
  fault({
    id: 'router-paused-camera',
    causes: ['router-blocks-camera'],
    title: "The camera is paused on the router's list of devices",
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'today' },
    mends: ['let-camera-in'],
    plain: { 'blocked-mark': 'device' },
    make: (lab) => forwardWall(lab, 'router', `${CAMERA} oifname "wan0" drop`),
  }),
  fault({
    id: 'router-new-device-waits',
    causes: ['router-blocks-camera'],
    title: 'A new router lets no device out that nobody has let in; the camera is refused at once',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['let-camera-in'],
    plain: { 'blocked-mark': 'device' },
    make: (lab) =>
      forwardWall(lab, 'router', `${CAMERA} oifname "wan0" reject with icmpx type admin-prohibited`),
  }),
  fault({
    id: 'firewall-web-only',
    causes: ['firewall-blocks-outbound'],
    title: "The firm's firewall lets cameras out to the plain web alone",
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'weeks' },
    mends: ['ask-network-keeper'],
    plain: { 'network-run-by': 'managed', 'blocked-mark': 'none' },
    make: (lab) =>
      forwardWall(
        lab,
        'router',
        `${CAMERA} tcp dport 80 accept`,
        `${CAMERA} meta l4proto { tcp, udp } th dport 53 accept`,
        `${CAMERA} icmp type echo-request accept`,
        `${CAMERA} oifname "wan0" drop`,
      ),
  }),
  fault({
    id: 'firewall-opens-tls',
    causes: ['firewall-blocks-outbound'],
    title: "The firm's firewall opens what is sealed and shows the camera its own certificate",
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['ask-network-keeper'],
    plain: { 'network-run-by': 'managed', 'blocked-mark': 'none' },
    make: async (lab) => {
      const proxy = await startPage(lab, 'router', 8443, 'Checked by the firm.', { tls: true });
      const away = await turnAway(lab, 'router', `${CAMERA} tcp dport 443 redirect to :8443`);
      const shut = await forwardWall(lab, 'router', `${CAMERA} meta l4proto udp th dport != 53 drop`);
      return async () => {
        await shut();
        await away();
        await proxy();
      };
    },
  }),
  fault({
    id: 'large-packets-lost',
    causes: ['packets-too-big'],
    title: 'Packets of more than 1400 bytes get lost beyond the router, and nobody says so',
    breaks: 'mobile',
    realism: 'real',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['smaller-packets'],
    make: async (lab) => {
      await withoutPunching(lab);
      return forwardWall(lab, 'provider', 'ip length > 1400 drop');
    },
  }),
];
