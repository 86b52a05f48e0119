import { join } from 'node:path';
import type { Carried, Host } from '../types.js';
import { carrierDns, TRANSLATED } from './names.js';
import { SERVERS } from './plan.js';

const GATEWAY = '2001:db8:72::1';
const POOL = '100.72.64';

/** Keeps no connections: one private address for each phone, and the carrier's own translation makes them one. */
const NAT64 = `tun-device nat64
ipv4-addr ${POOL}.1
ipv6-addr ${TRANSLATED}1:0:1
prefix ${TRANSLATED}/96
dynamic-pool ${POOL}.0/24
`;

/** Files in the carrier's folder. */
export const carrierFiles: readonly (readonly [Host, string, string])[] = [
  ['carrier', 'nat64.conf', NAT64],
  ['carrier', 'dns.conf', carrierDns(GATEWAY)],
];

/** What runs while phones have IPv6, by key. */
export const carrierDaemons = (home: string): readonly (readonly [string, readonly string[]])[] => [
  ['nat64', ['tayga', '--nodetach', '--config', join(home, 'nat64.conf')]],
  ['carrier-dns', ['dnsmasq', '-k', '-C', join(home, 'dns.conf')]],
];

/** Scripts for the carrier: from IPv4 only to IPv6 for its phones, and back. */
export const CARRIER_WITH_IPV6 = `set -e
ip tuntap add dev nat64 mode tun
ip -batch - <<'END'
link set nat64 up
addr add ${GATEWAY}/64 dev in0 nodad
route add ${TRANSLATED}/96 dev nat64
route add ${POOL}.0/24 dev nat64
END
echo 1 >/proc/sys/net/ipv6/conf/all/forwarding
`;
export const CARRIER_WITHOUT_IPV6 = `echo 0 >/proc/sys/net/ipv6/conf/all/forwarding
ip link del nat64
ip addr del ${GATEWAY}/64 dev in0
true
`;

/** What a phone is given when it goes to mobile data: a script for it. */
export function givenToPhone(phone: 'phone' | 'mobile', carried: Carried): string {
  const last = phone === 'phone' ? 12 : 11;
  const four = `ip addr add 100.72.0.${last}/24 brd + dev wwan0; ip route replace default via 100.72.0.1`;
  const six = `ip addr add 2001:db8:72::${last}/64 dev wwan0 nodad; ip -6 route replace default via ${GATEWAY} dev wwan0`;
  const given = carried === 'ipv4' ? [four] : carried === 'ipv6-only' ? [six] : [four, six];
  return ['ip addr flush dev wwan0 scope global; ip link set wwan0 up', ...given].join('; ');
}

/** The name servers that come with it. A phone with both keeps to the one that knows IPv4. */
export const mobileServers = (carried: Carried): readonly string[] =>
  carried === 'ipv6-only' ? [GATEWAY] : SERVERS.mobile;
