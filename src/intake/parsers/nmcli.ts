import type { Line, Parser, Taken } from '../parser.js';
import type { AdapterKind, Route } from '../seen.js';
import { type AdapterDraft, addAddress, addDns, draftOf } from '../unix/adapter-draft.js';
import { kindOfName } from '../unix/adapter-kind.js';
import { destinationOf } from '../unix/route-words.js';
import { firstWhere, shortText, walk } from '../unix/walk.js';
import { address4, address6, macOf, sides } from '../unix/words.js';

/** `IP4.ADDRESS[1]:    172.23.40.57/24`, and without blanks behind `-t`. The labels are never translated. */
const FIELD =
  /^((?:GENERAL|CAPABILITIES|INTERFACE-FLAGS|WIRED-PROPERTIES|WIFI-PROPERTIES|IP4|IP6|DHCP4|DHCP6|CONNECTIONS|BRIDGE|BOND|VLAN|TEAM|TUN)\.[A-Z0-9-]{1,40})(?:\[\d{1,4}\])?: {0,60}(.{0,400})$/;
const RULE = /^[=-]{20,200}$/;
const TITLE = /^\s{1,200}\p{L}[^:]{1,100} \([^()\s]{1,40}\)$/u;
const ROUTE = /^dst = (\S{1,64}), nh = (\S{1,64}?)(?:, mt = (\d{1,10}))?$/;
const SPEED = /^(\d{1,7}) Mb\/s$/;
const DHCP_SERVER = /^dhcp_server_identifier = (\S{1,64})$/;

const KINDS: ReadonlyMap<string, AdapterKind> = new Map([
  ['ethernet', 'lead'],
  ['wifi', 'wifi'],
  ['gsm', 'mobile'],
  ['cdma', 'mobile'],
  ['loopback', 'loopback'],
  ['bridge', 'virtual'],
  ['dummy', 'virtual'],
  ['veth', 'virtual'],
  ['tun', 'vpn'],
  ['wireguard', 'vpn'],
  ['ppp', 'vpn'],
  ['wifi-p2p', 'virtual'],
]);

/** `nmcli device show`, also with `-p` and `-t`. */
export const nmcli: Parser = {
  name: 'nmcli',
  source: 'nmcli(1) of NetworkManager',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => {
      if (FIELD.test(text)) return true;
      return RULE.test(text) && TITLE.test(shortText(lines[index + 1]));
    }),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: AdapterDraft[] = [];
  const routes: Route[] = [];
  const understood = walk(lines, from, (text, line) => {
    const [, label, raw] = FIELD.exec(text) ?? [];
    if (label === undefined || raw === undefined) return RULE.test(text) || TITLE.test(text) ? 'read' : 'end';
    const value = raw.replaceAll('\\:', ':');
    if (label === 'GENERAL.DEVICE') adapters.push(draftOf(value, kindOfName(value)));
    const adapter = adapters.at(-1) ?? draftOf('', 'unknown');
    if (adapters.length === 0) adapters.push(adapter);
    const route = label === 'IP4.ROUTE' ? routeOf(value, adapter.name, line) : undefined;
    if (route !== undefined) routes.push(route);
    readField(adapter, label, value, line);
    return 'read';
  });
  return { seen: { adapters, routes }, lines: understood };
}

function readField(adapter: AdapterDraft, label: string, value: string, line: number): void {
  const [address, length] = sides(value);
  const ipv4 = address4(value);
  const ipv6 = address6(value);
  if (label === 'GENERAL.TYPE' && adapter.kind === 'unknown') adapter.kind = KINDS.get(value) ?? 'unknown';
  else if (label === 'GENERAL.HWADDR') {
    const mac = macOf(value);
    if (mac !== undefined && adapter.kind !== 'loopback') adapter.mac = { value: mac, line };
  } else if (label === 'GENERAL.STATE') {
    const state = Number(/^\d{1,3}/.exec(value)?.[0] ?? Number.NaN);
    // 100 is connected; at 20 the adapter has no carrier. The others do not tell.
    if (state === 100 || state === 20) adapter.isUp = { value: state === 100, line };
  } else if (label === 'WIRED-PROPERTIES.CARRIER' && (value === 'on' || value === 'off')) {
    adapter.isUp = { value: value === 'on', line };
  } else if (label === 'CAPABILITIES.SPEED') {
    const speed = SPEED.exec(value)?.[1];
    if (speed !== undefined) adapter.speed = { value: Number(speed), line };
  } else if (label === 'IP4.ADDRESS' || label === 'IP6.ADDRESS') {
    addAddress(adapter, address, length, line);
  } else if (label === 'IP4.GATEWAY' && ipv4 !== undefined) adapter.gateways.push({ value: ipv4, line });
  else if (label === 'IP6.GATEWAY' && ipv6 !== undefined) adapter.gateways6.push({ value: ipv6, line });
  else if (label === 'IP4.DNS' || label === 'IP6.DNS') addDns(adapter, value, line);
  else if (label === 'DHCP4.OPTION') {
    const server = address4(DHCP_SERVER.exec(value)?.[1]);
    if (server !== undefined) adapter.dhcpServer = { value: server, line };
  }
}

function routeOf(value: string, adapter: string, line: number): Route | undefined {
  const [, to, hop, metric] = ROUTE.exec(value) ?? [];
  const destination = destinationOf(to);
  if (destination === undefined) return undefined;
  const via = address4(hop);
  return {
    ...destination,
    ...(via !== undefined && via.bits !== 0 && { via }),
    adapter,
    ...(metric !== undefined && { metric: Number(metric) }),
    line,
  };
}
