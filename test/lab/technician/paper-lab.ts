import type { AppScreen, Host, Lab, PhoneNetwork, Ran } from '../types.js';

const PAGE = `Yard camera - status

IP address: 172.23.40.21
Subnet mask: 255.255.255.0
Default gateway: 172.23.40.1
DNS servers: 172.23.40.1
MAC address: 02:53:00:00:00:21
Clock: 2026-11-25 14:30:07 UTC
Time server: ok
Service connection: online
Service name look-up: ok
Service UDP keepalive: ok
Service TCP secure connection: ok
Viewers: 0 of 4
Last error: none
`;

const ROUTER = `Router - status

Internet socket: cable connected
Internet address: 198.51.100.2
Internet subnet mask: 255.255.255.240
Internet gateway: 198.51.100.1
Internet DNS servers: 203.0.113.53
Local address: 172.23.40.1
Local subnet mask: 255.255.255.0
Giving out addresses (DHCP): on
Address range: 172.23.40.100 to 172.23.40.199
Device: 172.23.40.21  02:53:00:00:00:21
Device: 172.23.40.131  02:53:00:00:00:31  desk
`;

/** The outputs of a site where all is well, by host and command; the first that fits counts. */
export const WELL: Readonly<Record<string, string>> = {
  'computer ip addr': `2: eth0@if3: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc noqueue state UP
    link/ether 02:53:00:00:00:31 brd ff:ff:ff:ff:ff:ff
    inet 172.23.40.131/24 brd 172.23.40.255 scope global eth0
       valid_lft forever preferred_lft forever
`,
  'computer ip route': 'default via 172.23.40.1 dev eth0\n172.23.40.0/24 dev eth0 scope link\n',
  'computer ip -4 route show default': 'default via 172.23.40.1 dev eth0\n',
  'computer cat /etc/resolv.conf': 'nameserver 172.23.40.1\n',
  'computer ip -4 -o addr show': '2: eth0    inet 172.23.40.131/24 brd 172.23.40.255 scope global eth0\n',
  'computer ip -o link show up': '2: eth0@if3: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 state UP\n',
  'computer arping': 'Unicast reply from 172.23.40.21 [02:53:00:00:00:21]  0.6ms\n',
  'computer curl http://172.23.40.1/': `${ROUTER}\n200`,
  'computer curl http://172.23.40.21/': `${PAGE}\n200`,
  'phone curl http://172.23.40.21/': `${PAGE}\n200`,
  'computer curl http://www.example/':
    'This page opens.\nYour address as seen from here: 198.51.100.2\n\n200',
  'phone curl http://www.example/': 'This page opens.\nYour address as seen from here: 198.51.100.2\n\n200',
  'phone ip -o link show dev wlan0': '2: wlan0@if5: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 state UP\n',
  'phone ip -o link show dev wwan0': '3: wwan0@if9: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 state UP\n',
  'phone ip -4 -o addr show dev wlan0': '2: wlan0    inet 172.23.40.151/24 scope global wlan0\n',
  'phone date': '2026-11-25 14:30:20\n',
  'switch ip -o link show dev p-phone':
    '5: p-phone@if2: <BROADCAST,UP,LOWER_UP> mtu 1500 master site state UP\n',
  'switch ip -o link show dev p-camera':
    '6: p-camera@if2: <BROADCAST,UP,LOWER_UP> mtu 1500 master site state UP\n',
  'router ip -4 -o addr show dev lan0': '2: lan0    inet 172.23.40.1/24 scope global lan0\n',
  'camera cat': '02:53:00:00:00:21\n',
};

/** A site on paper: what its devices print, its lights and its screens. Whatever is not named prints nothing. */
export interface Paper {
  readonly prints?: Readonly<Record<string, string>>;
  readonly page?: string | undefined;
  readonly light?: 'lit' | 'dark';
  readonly app?: (phone: 'phone' | 'mobile', on: PhoneNetwork) => AppScreen['shows'];
  /** One screen can come with several words; without these the app names only what it shows. */
  readonly words?: string;
}

export const ALL_WELL: Paper = { prints: WELL, page: PAGE, light: 'lit', app: () => 'picture' };
export const ALL_DARK: Paper = { light: 'dark', app: () => 'no-connection' };

export interface PaperLab {
  readonly lab: Lab;
  /** Where the phone has been, and what was plugged. */
  readonly done: readonly string[];
}

export function paperLab(paper: Paper): PaperLab {
  const done: string[] = [];
  let at: PhoneNetwork = 'wifi';
  const run = async (host: Host, argv: readonly string[]): Promise<Ran> => {
    const isOut = done.at(-1)?.endsWith('p-camera down') === true;
    const stdout = isOut && argv[0] === 'arping' ? '' : printed(paper, host, argv);
    return { host, argv, code: stdout === '' ? 1 : 0, stdout, stderr: '', ms: 1, timedOut: false };
  };
  const not = (): never => {
    throw new Error('nobody on site does this');
  };
  const lab: Lab = {
    id: 'paper',
    run,
    ip: async (host, batch) => void done.push(`${host}: ${batch}`),
    phoneTo: async (network) => {
      at = network;
      done.push(network);
    },
    cameraPage: async () => paper.page,
    cameraNetwork: not,
    app: async (phone) => {
      const shows = paper.app?.(phone, phone === 'mobile' ? 'mobile' : at) ?? 'waiting';
      return { shows, way: 'none', words: paper.words ?? `It shows ${shows}.` };
    },
    carrier: not,
    light: async () => paper.light ?? 'dark',
    up: not,
    down: not,
    nft: not,
    daemon: not,
    stop: not,
    listening: not,
    dhcp: not,
    resolv: not,
    restart: not,
    cameraFresh: not,
    defer: not,
    restore: not,
    takeLog: not,
  };
  return { lab, done };
}

function printed({ prints = {} }: Paper, host: Host, argv: readonly string[]): string {
  if (argv[0] === 'ping' && prints['computer arping'] !== undefined) return pings(argv);
  const [name = ''] = argv;
  const command = name === 'curl' ? `${name} ${argv.at(-1)}` : argv.join(' ');
  const key = Object.keys(prints).find((one) => `${host} ${command}`.startsWith(one));
  return key === undefined ? '' : (prints[key] ?? '');
}

function pings(argv: readonly string[]): string {
  const count = Number(argv[argv.indexOf('-c') + 1]);
  const line = (number: number): string =>
    `64 bytes from ${argv.at(-1)}: icmp_seq=${number} ttl=64 time=0.1 ms\n`;
  return Array.from({ length: count }, (_, index) => line(index + 1)).join('');
}
