import { subnetOf } from '../../../src/arithmetic/subnet.js';
import type { Device, Host, Interface, Route, Router, Site } from '../../../src/arithmetic/walk/site.js';
import { type Address, isBlank } from '../../../src/values/address.js';
import type { Mask } from '../../../src/values/mask.js';
import { type Chance, chanceOf } from './chance.js';
import { HOSTS, type Network, ROUTERS, SEGMENTS } from './network.js';

const PROBES = 5;
const BLANK = ip(0);
const PREFIXES = [8, 12, 16, 20, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32];

interface Range {
  readonly segment: string;
  readonly base: number;
  readonly prefix: number;
}

/** A network by chance: 2 to 5 hosts, up to 2 routers, 1 to 3 segments, most of it right and some of it wrong. */
export function drawNetwork(seed: number): Network {
  const chance = chanceOf(seed);
  for (;;) {
    const site = drawSite(chance);
    const probes = drawProbes(site, chance);
    if (probes.length > 0 && !hasEndOfSubnet(site)) return { site, probes };
  }
}

/**
 * Whether something is set to, or sent to, the lowest or highest address of a range that a device knows: the kernel
 * takes the highest for a broadcast, the walk has no broadcasts (README.md, "Ends of a subnet").
 */
function hasEndOfSubnet({ devices }: Site): boolean {
  const ends = devices
    .flatMap(({ interfaces }) => interfaces)
    .filter(({ address, mask }) => mask.prefix <= 30 && !isBlank(address))
    .map(({ address, mask }) => subnetOf(address, mask))
    .flatMap(({ network, broadcast }) => [network.bits, broadcast.bits]);
  const used = devices.flatMap(({ interfaces, gateway, routes = [] }) => [
    ...interfaces.map(({ address }) => address.bits),
    ...(gateway ? [gateway.bits] : []),
    ...routes.map(({ via }) => via.bits),
  ]);
  return used.some((bits) => bits !== 0 && ends.includes(bits));
}

function drawSite(chance: Chance): Site {
  const ranges = SEGMENTS.slice(0, 1 + chance.upTo(3)).map((segment, n) => drawRange(segment, n, chance));
  const routers = ROUTERS.slice(0, routerCount(ranges.length, chance)).map((id, n) =>
    drawRouter(id, n, ranges, chance),
  );
  const hosts: Host[] = [];
  for (const id of HOSTS.slice(0, 2 + chance.upTo(4))) {
    hosts.push(drawHost(id, ranges, [...routers, ...hosts], chance));
  }
  const segments = ranges.map(({ segment }) => ({
    id: segment,
    name: segment,
    isolated: chance.happens(7),
  }));
  const gated = routers.map((router) => withGateway(router, [...routers, ...hosts], chance));
  return { segments, devices: [...hosts, ...gated] };
}

function routerCount(segments: number, chance: Chance): number {
  if (segments === 1) return chance.happens(50) ? 1 : 0;
  return chance.happens(10) ? 0 : 1 + chance.upTo(2);
}

function drawRange(segment: string, n: number, chance: Chance): Range {
  if (chance.happens(8)) return { segment, base: bitsOf(172, 23, 40, 0), prefix: 24 };
  if (chance.happens(15))
    return { segment, base: bitsOf(10, 77, 5, 32 * n), prefix: chance.pick([27, 28, 29]) };
  return { segment, base: bitsOf(172, 23, 40 + n, 0), prefix: chance.pick([24, 24, 24, 25, 26]) };
}

function drawRouter(id: string, n: number, ranges: readonly Range[], chance: Chance): Router {
  const on = ranges.filter(() => chance.happens(80));
  const [fallback] = ranges;
  const kept = on.length > 0 || fallback === undefined ? on : [fallback];
  const interfaces = kept.map((range): Interface => {
    const own = chance.happens(88) ? range.base + 1 + n : range.base + chance.upTo(200);
    return { segment: range.segment, address: ip(own), mask: drawMask(range, 90, chance) };
  });
  const wan = kept[kept.length - 1]?.segment;
  const [first, second] = kept;
  return {
    kind: 'router',
    id,
    name: id,
    interfaces,
    ...(chance.happens(15) && { proxyArp: true }),
    ...(wan !== undefined && kept.length > 1 && chance.happens(25) && { natOn: wan }),
    ...(chance.happens(25) && { dropsUnasked: true }),
    ...(first && second && chance.happens(12) && { keepsApart: [[first.segment, second.segment]] }),
  };
}

function withGateway(router: Router, all: readonly Device[], chance: Chance): Router {
  const others = all.filter(({ id }) => id !== router.id);
  const routes = drawRoutes(router, others, 15, chance);
  if (!chance.happens(55)) return { ...router, ...(routes.length > 0 && { routes }) };
  const gateway = drawGateway(router.interfaces, others, chance);
  return { ...router, gateway, ...(routes.length > 0 && { routes }) };
}

function drawHost(id: string, ranges: readonly Range[], others: readonly Device[], chance: Chance): Host {
  const home = chance.pick(ranges);
  const interfaces = [drawInterface(home, ranges, others, chance)];
  if (chance.happens(12)) {
    interfaces.push(drawInterface(chance.happens(50) ? home : chance.pick(ranges), ranges, others, chance));
  }
  const gateway = drawGateway(interfaces, others, chance);
  const routes = drawRoutes({ interfaces }, others, 12, chance);
  return {
    kind: 'host',
    id,
    name: id,
    interfaces: interfaces.filter((one, at) => interfaces.findIndex((two) => isTwice(one, two)) === at),
    gateway,
    ...(routes.length > 0 && { routes }),
    ...(chance.happens(40) && { takesOutsideGateway: true }),
  };
}

function isTwice(one: Interface, two: Interface): boolean {
  return one.address.bits === two.address.bits;
}

function drawInterface(
  home: Range,
  ranges: readonly Range[],
  others: readonly Device[],
  chance: Chance,
): Interface {
  const { segment } = home;
  const wild = chance.upTo(100);
  if (wild < 3) return { segment, address: BLANK, mask: drawMask(home, 100, chance) };
  if (wild < 6) return { segment, address: ip(bitsOf(169, 254, chance.upTo(256), 9)), mask: prefix(16) };
  const taken = others.flatMap(({ interfaces }) => interfaces).filter(({ address }) => !isBlank(address));
  if (wild < 11 && taken.length > 0) {
    return { segment, address: chance.pick(taken).address, mask: drawMask(home, 70, chance) };
  }
  const range = wild < 22 ? chance.pick(ranges) : home;
  return { segment, address: inside(range, chance), mask: drawMask(range, 65, chance) };
}

function drawMask(range: Range, right: number, chance: Chance): Mask {
  return prefix(chance.happens(right) ? range.prefix : chance.pick(PREFIXES));
}

function drawGateway(own: readonly Interface[], others: readonly Device[], chance: Chance): Address {
  const [first] = own;
  const routers = others.filter(({ kind }) => kind === 'router').flatMap(({ interfaces }) => interfaces);
  const near = routers.filter(({ segment }) => segment === first?.segment);
  const hosts = others.filter(({ kind }) => kind === 'host').flatMap(({ interfaces }) => interfaces);
  const kind = chance.upTo(100);
  if (kind < 55 && near.length > 0) return chance.pick(near).address;
  if (kind < 65 && routers.length > 0) return chance.pick(routers).address;
  if (kind < 72 && first) return first.address;
  if (kind < 80 && hosts.length > 0) return chance.pick(hosts).address;
  if (kind < 88 && first && !isBlank(first.address))
    return ip((first.address.bits & ~0xff) + 1 + chance.upTo(250));
  if (kind < 94) return ip(bitsOf(172, 23, 88, 1 + chance.upTo(250)));
  return BLANK;
}

function drawRoutes(
  { interfaces }: { readonly interfaces: readonly Interface[] },
  others: readonly Device[],
  percent: number,
  chance: Chance,
): readonly Route[] {
  if (!chance.happens(percent)) return [];
  const length = chance.pick([8, 16, 22, 24, 24, 24, 25, 28, 32]);
  const known = others.flatMap((device) => device.interfaces.map(({ address }) => address));
  const target = chance.pick([...known, ip(bitsOf(172, 23, 40 + chance.upTo(3), 9))]);
  const via = drawGateway(interfaces, others, chance);
  if (isBlank(target) || isBlank(via)) return [];
  return [{ address: subnetOf(target, prefix(length)).network, mask: prefix(length), via }];
}

function drawProbes({ devices }: Site, chance: Chance): readonly (readonly [string, string])[] {
  const pairs = devices.flatMap((from) =>
    devices
      .filter((to) => to.id !== from.id && to.interfaces[0] && !isBlank(to.interfaces[0].address))
      .map((to) => [from.id, to.id] as const),
  );
  const hostPairs = pairs.filter((pair) => pair.every((id) => id.startsWith('h')));
  const chosen = new Map<string, readonly [string, string]>();
  for (let n = 0; n < PROBES && pairs.length > 0; n += 1) {
    const pair = chance.pick(hostPairs.length > 0 && chance.happens(75) ? hostPairs : pairs);
    chosen.set(pair.join(), pair);
  }
  return [...chosen.values()];
}

function inside({ base, prefix: length }: Range, chance: Chance): Address {
  return ip(base + 1 + chance.upTo(2 ** (32 - length) - 2));
}

function bitsOf(a: number, b: number, c: number, d: number): number {
  return ((a << 24) | (b << 16) | (c << 8) | d) >>> 0;
}

function ip(bits: number): Address {
  return { kind: 'ipv4', bits: bits >>> 0 };
}

function prefix(length: number): Mask {
  return { kind: 'mask', prefix: length };
}
