import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Host } from '../types.js';
import { carrierFiles } from './carrier.js';
import { serviceDns } from './names.js';

const BESIDE = fileURLToPath(new URL('./devices/', import.meta.url));

/** Beside this file, or, where it was bundled elsewhere, in the project's folder that the run was started in. */
const DEVICES = existsSync(BESIDE) ? BESIDE : resolve('test/lab/site/devices');

/** The command of one of the site's own programs. */
export const program = (name: 'camera' | 'service' | 'app' | 'router', ...more: readonly string[]) => [
  '/usr/bin/python3',
  '-B',
  join(DEVICES, `${name}.py`),
  ...more,
];

export const leaseScript = join(DEVICES, 'lease.sh');

const ACCOUNT = 'orchard-house';
const ACCOUNT_PASSWORD = 'plum-42-ladder';
const CAMERA_PASSWORD = 'gate-17-lantern';
const SERVICE = 'rendezvous.example';

const camera = (ca: string, id: string, title: string, rendezvousOn: boolean) => ({
  id,
  key: `key-of-${id}`,
  title,
  ca,
  password: CAMERA_PASSWORD,
  rendezvous: SERVICE,
  rendezvousOn,
  timeServer: 'time.example',
  udpPort: 40021,
  httpPort: 80,
  rtspPort: 554,
  keepaliveSeconds: 1,
  maxViewers: 4,
  encoder: true,
  allow: [],
});

const app = (ca: string) => ({
  account: ACCOUNT,
  password: ACCOUNT_PASSWORD,
  cameraPassword: CAMERA_PASSWORD,
  service: SERVICE,
  ca,
});

const dhcp = (home: string) => `port=0
interface=lan0
interface=guest0
except-interface=lo
bind-dynamic
no-ping
no-hosts
dhcp-authoritative
dhcp-range=set:site,172.23.40.100,172.23.40.199,255.255.255.0,1h
dhcp-range=set:guest,172.23.41.100,172.23.41.199,255.255.255.0,1h
dhcp-option=option:router,0.0.0.0
dhcp-option=option:dns-server,0.0.0.0
dhcp-leasefile=${home}/leases
log-facility=${home}/dhcp.log
log-dhcp
pid-file
user=root
`;

const DNS = `interface=lan0
interface=guest0
bind-dynamic
no-resolv
no-hosts
cache-size=0
server=203.0.113.53
pid-file
user=root
`;

/** The files a device starts with, by host and name: its settings, which a person changes on its page. */
export function homeFiles(folder: string): readonly (readonly [Host, string, string])[] {
  const ca = join(folder, 'ca.pem');
  const json = (value: unknown) => `${JSON.stringify(value, undefined, 1)}\n`;
  const service = {
    open: true,
    relay: true,
    certificate: join(folder, 'service.pem'),
    privateKey: join(folder, 'service.key'),
    accounts: { [ACCOUNT]: { password: ACCOUNT_PASSWORD, cameras: ['yard-1'] } },
    cameras: { 'yard-1': 'key-of-yard-1' },
  };
  return [
    ['camera', 'camera.json', json(camera(ca, 'yard-1', 'Yard camera', true))],
    ['twin', 'camera.json', json(camera(ca, 'shed-2', 'Another device', false))],
    ['phone', 'app.json', json(app(ca))],
    ['mobile', 'app.json', json(app(ca))],
    ['service', 'service.json', json(service)],
    ['service', 'dns.conf', serviceDns('203.0.113.53')],
    ['router', 'dns.conf', DNS],
    ['router', 'dhcp.conf', dhcp(join(folder, 'router'))],
    ...carrierFiles,
  ];
}

/** Somebody else's STUN (RFC 8489): whoever reads its answers here is not checked against our own reading of it. */
const stun = (home: string) => [
  ...['turnserver', '-n', '--stun-only', '-L', '203.0.113.10', '-L', '203.0.113.11', '-p', '3478', '-m', '1'],
  ...['--no-cli', '--no-tcp', '--no-tls', '--no-dtls', '--log-file', 'stdout', '--simple-log'],
  // Else it writes both outside the lab's folder.
  ...['--pidfile', join(home, 'turnserver.pid'), '--userdb', join(home, 'turnserver.db')],
];

/** The daemons of a healthy site: key, host, command. `camera` is the last, as it needs the others. */
export function siteDaemons(folder: string): readonly (readonly [string, Host, readonly string[]])[] {
  const dnsmasq = (host: Host, conf: string) => ['dnsmasq', '-k', '-C', join(folder, host, conf)];
  return [
    ['service', 'service', program('service')],
    ['stun', 'service', stun(join(folder, 'service'))],
    ['service-dns', 'service', dnsmasq('service', 'dns.conf')],
    ['router-dns', 'router', dnsmasq('router', 'dns.conf')],
    ['router-dhcp', 'router', dnsmasq('router', 'dhcp.conf')],
    ['router-page', 'router', program('router')],
    ['camera', 'camera', program('camera')],
  ];
}

const EC = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes'];

/** Two commands: the lab's own certificate authority, and the service's certificate from it. */
export function certificateCommands(folder: string): readonly (readonly string[])[] {
  const at = (name: string) => join(folder, name);
  const own = ['openssl', 'req', '-x509', ...EC];
  return [
    [...own, '-days', '400', '-subj', '/CN=Site authority', '-keyout', at('ca.key'), '-out', at('ca.pem')],
    [
      ...own,
      ...['-days', '390', '-subj', `/CN=${SERVICE}`, '-addext', `subjectAltName=DNS:${SERVICE}`],
      ...['-addext', 'basicConstraints=critical,CA:FALSE', '-CA', at('ca.pem'), '-CAkey', at('ca.key')],
      ...['-keyout', at('service.key'), '-out', at('service.pem')],
    ],
  ];
}
