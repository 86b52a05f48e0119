import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import ipaddr from 'ipaddr.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Parser } from '../../../src/intake/parser.js';
import { arpTable } from '../../../src/intake/parsers/arp-table.js';
import { ifconfig } from '../../../src/intake/parsers/ifconfig.js';
import { ipAddress } from '../../../src/intake/parsers/ip-address.js';
import { ipBrief } from '../../../src/intake/parsers/ip-brief.js';
import { ipJson } from '../../../src/intake/parsers/ip-json.js';
import { ipNeighbour } from '../../../src/intake/parsers/ip-neighbour.js';
import { ipRoute } from '../../../src/intake/parsers/ip-route.js';
import { linuxRoutes } from '../../../src/intake/parsers/linux-routes.js';
import { unixArp } from '../../../src/intake/parsers/unix-arp.js';
import type { Seen } from '../../../src/intake/seen.js';
import { plainLines, readAlone, shown } from './shown.js';

// Two namespaces joined by a lead, a camera in the second. Nothing leaves them.
const HERE = `whydark-here-${process.pid}`;
const THERE = `whydark-there-${process.pid}`;

/** Both are removed again whatever happens, by these names and no others. */
function remove(): void {
  for (const name of [HERE, THERE]) {
    if (existsSync(`/var/run/netns/${name}`)) execFileSync('ip', ['netns', 'del', name]);
  }
}

function run(command: string): string {
  const [program = '', ...words] = command.split(' ');
  return execFileSync(program, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

/** Why there is nothing to look at; empty where there is. */
function missing(): string {
  if (process.getuid?.() !== 0) return 'not root, so no network namespaces';
  try {
    run('ip -V');
    execFileSync('ip', ['netns', 'add', HERE], { stdio: 'ignore' });
    remove();
    return '';
  } catch {
    return 'no ip command that makes network namespaces';
  }
}

function has(program: string): boolean {
  return ['/sbin', '/usr/sbin', '/bin', '/usr/bin'].some((folder) => existsSync(`${folder}/${program}`));
}

const WHY = missing();
const NET_TOOLS = WHY === '' && has('ifconfig') && has('arp') && has('route') && has('netstat');

const SET_UP = [
  `ip netns add ${HERE}`,
  `ip netns add ${THERE}`,
  `ip -n ${HERE} link set lo up`,
  `ip -n ${HERE} link add eth0 address 02:00:5e:10:00:05 type veth peer name eth0 netns ${THERE}`,
  `ip -n ${THERE} link set eth0 address 02:00:5e:10:00:57 up`,
  `ip -n ${THERE} addr add 172.23.40.57/24 dev eth0`,
  `ip -n ${HERE} link set eth0 up`,
  `ip -n ${HERE} addr add 172.23.40.5/24 dev eth0 valid_lft 86000 preferred_lft 86000`,
  `ip -n ${HERE} addr add 10.77.5.5/22 dev eth0`,
  `ip -n ${HERE} addr add 2001:db8::5/64 dev eth0 nodad`,
  `ip -n ${HERE} route add default via 172.23.40.57 dev eth0 metric 100`,
  `ip -n ${HERE} route add 203.0.113.0/25 via 172.23.40.57`,
  `ip -n ${HERE} route add unreachable 198.51.100.0/24`,
  `ip -n ${HERE} neigh add 172.23.40.57 lladdr 02:00:5e:10:00:57 dev eth0 nud permanent`,
  `ip -n ${HERE} neigh add 172.23.40.61 lladdr 02:00:5e:10:00:61 dev eth0 nud stale`,
];

function seenBy(parser: Parser, command: string): Partial<Seen> {
  return readAlone(parser, plainLines(run(command))).seen;
}

/** Line numbers differ between two forms of the same thing. */
function withoutLines(value: unknown): unknown {
  return JSON.parse(JSON.stringify(shown(value), (key, it) => (key === 'line' ? undefined : it)));
}

describe.skipIf(WHY !== '')(`in a network namespace${WHY === '' ? '' : ` (left out: ${WHY})`}`, () => {
  beforeAll(() => {
    try {
      for (const command of SET_UP) run(command);
    } catch (cause) {
      remove();
      throw cause;
    }
  });
  afterAll(remove);

  test('ip addr tells what was set', () => {
    const { adapters = [] } = seenBy(ipAddress, `ip -n ${HERE} addr`);
    const eth0 = adapters.find((adapter) => adapter.name === 'eth0');
    expect(withoutLines(eth0?.addresses)).toEqual([
      { address: '172.23.40.5', mask: '255.255.255.0' },
      { address: '10.77.5.5', mask: '255.255.252.0' },
    ]);
    expect(eth0).toMatchObject({ kind: 'lead', mac: { value: '02:00:5e:10:00:05' } });
    expect(eth0).toMatchObject({ isUp: { value: true }, isByHand: { value: false } });
  });

  test.each([
    ['addr', ipAddress],
    ['route', ipRoute],
    ['neigh', ipNeighbour],
  ] as const)('ip %s says the same as text and as JSON', (what, parser) => {
    const text = withoutLines(seenBy(parser, `ip -n ${HERE} ${what}`));
    expect(withoutLines(seenBy(ipJson, `ip -n ${HERE} -j ${what}`))).toEqual(text);
    expect(withoutLines(seenBy(ipJson, `ip -n ${HERE} -j -p ${what}`))).toEqual(text);
    expect(text).not.toEqual({});
  });

  test('ip -br addr has the addresses of ip addr', () => {
    const long = seenBy(ipAddress, `ip -n ${HERE} addr`).adapters ?? [];
    const short = seenBy(ipBrief, `ip -n ${HERE} -br addr`).adapters ?? [];
    const places = (all: typeof long) =>
      withoutLines(all.map(({ name, addresses, addresses6 }) => ({ name, addresses, addresses6 })));
    expect(places(short)).toEqual(places(long));
  });

  test('every address that ip -j prints is given, and no other, as ipaddr.js writes it', () => {
    const printed = JSON.parse(run(`ip -n ${HERE} -j addr`)) as { addr_info: { local: string }[] }[];
    const wanted = printed.flatMap((one) => one.addr_info.map((it) => ipaddr.parse(it.local).toString()));
    const { adapters = [] } = seenBy(ipAddress, `ip -n ${HERE} addr`);
    const given = adapters.flatMap(({ addresses, addresses6 }) => [
      ...addresses.map((it) => String(shown(it.address))),
      ...addresses6.map((it) => String(shown(it.value))),
    ]);
    expect(given.sort()).toEqual(wanted.sort());
    expect(given.length).toBeGreaterThan(4);
  });

  test.skipIf(!NET_TOOLS)('the older commands agree with ip', () => {
    const inside = `ip netns exec ${HERE}`;
    const adapters = seenBy(ifconfig, `${inside} ifconfig eth0`).adapters ?? [];
    expect(withoutLines(adapters[0]?.addresses[0])).toEqual({
      address: '172.23.40.5',
      mask: '255.255.255.0',
    });
    const neighbours = seenBy(ipNeighbour, `ip -n ${HERE} neigh`).neighbours ?? [];
    const pairs = (all: typeof neighbours) =>
      all.map(({ address, mac }) => `${shown(address)} ${mac}`).sort();
    expect(pairs(seenBy(unixArp, `${inside} arp -an`).neighbours ?? [])).toEqual(pairs(neighbours));
    expect(pairs(seenBy(arpTable, `${inside} arp -n`).neighbours ?? [])).toEqual(pairs(neighbours));
    const routes = seenBy(ipRoute, `ip -n ${HERE} route`).routes ?? [];
    const ways = (all: typeof routes) =>
      all.map(({ to, mask, via }) => JSON.stringify(shown({ to, mask, via }))).sort();
    expect(ways(seenBy(linuxRoutes, `${inside} route -n`).routes ?? [])).toEqual(ways(routes));
    expect(ways(seenBy(linuxRoutes, `${inside} netstat -rn`).routes ?? [])).toEqual(ways(routes));
    expect(routes.length).toBe(4);
  });
});
