import type { Host } from '../types.js';

export const HOSTS: readonly Host[] = [
  'camera',
  'computer',
  'phone',
  'mobile',
  'twin',
  'switch',
  'router',
  'box',
  'provider',
  'internet',
  'service',
  'carrier',
];

/** Where connection tracking is in use, in a healthy site or as a fault. */
export const TRACKING: readonly Host[] = ['router', 'box', 'provider', 'carrier'];

export const CAMERA_MAC = '02:53:00:00:00:21';

type End = readonly [host: Host, name: string, mac?: string];

const LINKS: readonly (readonly [End, End])[] = [
  [
    ['camera', 'eth0', CAMERA_MAC],
    ['switch', 'p-camera'],
  ],
  [
    ['computer', 'eth0', '02:53:00:00:00:31'],
    ['switch', 'p-computer'],
  ],
  [
    ['twin', 'eth0', '02:53:00:00:00:41'],
    ['switch', 'p-twin'],
  ],
  [
    ['phone', 'wlan0', '02:53:00:00:00:51'],
    ['switch', 'p-phone'],
  ],
  [
    ['router', 'lan0', '02:53:00:00:00:01'],
    ['switch', 'p-router'],
  ],
  [
    ['router', 'guest0', '02:53:00:00:00:02'],
    ['switch', 'p-guest'],
  ],
  [
    ['router', 'wan0', '02:53:00:00:00:03'],
    ['box', 'in0'],
  ],
  [
    ['box', 'out0'],
    ['provider', 'in0'],
  ],
  [
    ['provider', 'out0'],
    ['internet', 'prov0'],
  ],
  [
    ['internet', 'serv0'],
    ['service', 'eth0'],
  ],
  [
    ['internet', 'carr0'],
    ['carrier', 'out0'],
  ],
  [
    ['phone', 'wwan0', '02:53:00:00:00:52'],
    ['carrier', 'c-phone'],
  ],
  [
    ['mobile', 'wwan0', '02:53:00:00:00:53'],
    ['carrier', 'c-mobile'],
  ],
];

/** Lines for `ip -batch -`: the namespaces and the links between them, none of them to the machine itself. */
export function linkBatch(namespace: (host: Host) => string): string {
  const made = HOSTS.map((host) => `netns add ${namespace(host)}`);
  const end = ([host, name, mac]: End) =>
    `name ${name}${mac ? ` address ${mac}` : ''} netns ${namespace(host)}`;
  const links = LINKS.map(([a, b]) => `link add ${end(a)} type veth peer ${end(b)}`);
  return `${[...made, ...links].join('\n')}\n`;
}

const CORE = 'addr add 203.0.113';

/** Lines for `ip -batch -` on each host, after its links exist. */
const BATCH: Readonly<Record<Host, string>> = {
  camera: 'link set eth0 up\naddr add 172.23.40.21/24 brd + dev eth0\nroute add default via 172.23.40.1',
  computer: 'link set eth0 up',
  twin: 'link set eth0 up',
  phone: 'link set wlan0 up',
  mobile: 'link set wwan0 up\naddr add 100.72.0.11/24 brd + dev wwan0\nroute add default via 100.72.0.1',
  switch: `link add name site type bridge stp_state 0 forward_delay 0 mcast_snooping 0
link add name guest type bridge stp_state 0 forward_delay 0 mcast_snooping 0
link set p-camera master site up
link set p-computer master site up
link set p-twin master site up
link set p-phone master site up
link set p-router master site up
link set p-guest master guest up
link set site up
link set guest up`,
  router: `link set lan0 up
link set guest0 up
link set wan0 up
addr add 172.23.40.1/24 brd + dev lan0
addr add 172.23.41.1/24 brd + dev guest0
addr add 198.51.100.2/28 brd + dev wan0
route add default via 198.51.100.1`,
  box: `link add name box type bridge stp_state 0 forward_delay 0 mcast_snooping 0
link set in0 master box up
link set out0 master box up
link set box up`,
  provider: `link set in0 up
link set out0 up
addr add 198.51.100.1/28 brd + dev in0
${CORE}.129/30 dev out0
route add default via 203.0.113.130`,
  internet: `link set prov0 up
link set serv0 up
link set carr0 up
${CORE}.130/30 dev prov0
${CORE}.1/26 dev serv0
${CORE}.133/30 dev carr0
route add 198.51.100.0/28 via 203.0.113.129`,
  service: `link set eth0 up
${CORE}.10/26 dev eth0
${CORE}.11/26 dev eth0
${CORE}.40/26 dev eth0
${CORE}.53/26 dev eth0
route add default via 203.0.113.1`,
  carrier: `link add name in0 type bridge stp_state 0 forward_delay 0 mcast_snooping 0
link set c-phone master in0 up
link set c-mobile master in0 up
link set in0 up
link set out0 up
addr add 100.72.0.1/24 brd + dev in0
${CORE}.134/30 dev out0
route add default via 203.0.113.133`,
};

/** Address translation with a closed outside: nothing unasked comes in, not even to the device itself. */
const nat = (outside: string, forward: string) => `table inet filter {
  chain input {
    type filter hook input priority 0; policy accept;
    iifname "${outside}" ct state established,related accept
    iifname "${outside}" icmp type echo-request accept
    iifname "${outside}" drop
  }
  chain forward {
    type filter hook forward priority 0; policy accept;
    ct state invalid drop
    ct state established,related accept
    ct status dnat accept
    iifname "${outside}" drop
${forward}  }
}
table ip nat {
  chain prerouting { type nat hook prerouting priority -100; policy accept; }
  chain postrouting {
    type nat hook postrouting priority 100; policy accept;
    oifname "${outside}" masquerade
  }
}
`;

const RULES: Partial<Readonly<Record<Host, string>>> = {
  router: nat('wan0', '    iifname "guest0" oifname "lan0" drop\n    iifname "lan0" oifname "guest0" drop\n'),
  carrier: nat('out0', ''),
};

const ROUTING: readonly Host[] = ['router', 'provider', 'internet', 'carrier', 'box'];

const KERNEL = (routing: boolean) => `w() { if [ -e "$2" ]; then echo "$1" >"$2"; fi; }
c=/proc/sys/net/ipv4/conf
w ${routing ? 1 : 0} /proc/sys/net/ipv4/ip_forward
for i in $c/*; do
  w 0 $i/rp_filter; w 0 $i/accept_redirects; w 0 $i/send_redirects; w 1 $i/arp_ignore; w 2 $i/arp_announce
done
for i in /proc/sys/net/ipv4/neigh/*; do w 300 $i/retrans_time_ms; done
for i in /proc/sys/net/ipv6/conf/*; do w 0 $i/accept_dad; w 0 $i/router_solicitations; done
w 0 /proc/sys/net/ipv4/icmp_ratelimit
w 0 /proc/sys/net/bridge/bridge-nf-call-iptables
w 0 /proc/sys/net/bridge/bridge-nf-call-arptables
w 0 /proc/sys/net/bridge/bridge-nf-call-ip6tables
`;

/** A shell script that sets a host up, run inside its namespace. Frames leave one by one (no segmentation offload). */
export function hostScript(host: Host): string {
  const own = LINKS.flat().filter(([where]) => where === host);
  const single = own.map(([, name]) => `link set ${name} gso_max_segs 1`).join('\n');
  const rules = RULES[host];
  return `set -e
ip -batch - <<'END'
link set lo up
${single}
${BATCH[host]}
END
${KERNEL(ROUTING.includes(host))}${rules === undefined ? '' : `nft -f - <<'END'\n${rules}END\n`}`;
}

/** The name servers a host starts with. */
export const SERVERS: Readonly<Record<Host, readonly string[]>> = {
  camera: ['172.23.40.1'],
  computer: [],
  phone: [],
  mobile: ['203.0.113.53'],
  twin: [],
  switch: [],
  router: ['203.0.113.53'],
  box: ['203.0.113.53'],
  provider: ['203.0.113.53'],
  internet: ['203.0.113.53'],
  service: ['203.0.113.53'],
  carrier: ['203.0.113.53'],
};

/** The text of a host's resolv.conf. */
export const resolvText = (servers: readonly string[]) =>
  `${servers.map((server) => `nameserver ${server}\n`).join('')}options timeout:1 attempts:1\n`;
