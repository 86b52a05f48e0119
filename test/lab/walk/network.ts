import { showBlock } from '../../../src/arithmetic/show-block.js';
import type { Device, Router, Site } from '../../../src/arithmetic/walk/site.js';
import { type Address, isBlank, showAddress } from '../../../src/values/address.js';

/** A small network and the pings to try in it, each from a device to a device. */
export interface Network {
  readonly site: Site;
  readonly probes: readonly (readonly [string, string])[];
  /** Kernel settings changed for this network only: device, path under /proc/sys/net, value. */
  readonly settings?: readonly (readonly [string, string, string])[];
  /** Routers pass self-assigned addresses on, as Linux does by itself. */
  readonly passesSelfAssigned?: boolean;
}

/** Segments are called s0, s1, s2, as the links are. */
export const SEGMENTS = ['s0', 's1', 's2'] as const;
export const HOSTS = ['h1', 'h2', 'h3', 'h4', 'h5'] as const;
export const ROUTERS = ['r1', 'r2'] as const;

/** What the pool is asked, as JSON. The kernel decides on each line; refusals are part of the behaviour. */
export function requestOf(network: Network, isSlow = false): object {
  const { site, probes, settings = [], passesSelfAssigned = false } = network;
  const hosts = site.devices.filter(({ kind }) => kind === 'host');
  const isolated = site.segments
    .filter((segment) => segment.isolated === true)
    .flatMap(({ id }) => hosts.map((host) => `${host.id}${id}`));
  return {
    devices: Object.fromEntries(
      site.devices.map((device) => [device.id, deviceRequest(device, passesSelfAssigned)]),
    ),
    isolated,
    settings,
    probes: probes.map(([from, to]) => [from, calledAddress(site, to)]),
    slow: isSlow,
  };
}

/** The address that is called: the first of the device. */
export function calledAddress(site: Site, id: string): string {
  const called = site.devices.find((device) => device.id === id)?.interfaces[0]?.address;
  if (called === undefined) throw new Error(`"${id}" has no address to call`);
  return showAddress(called);
}

function deviceRequest(device: Device, passesSelfAssigned: boolean): object {
  return {
    ip: ipLines(device),
    ...(device.kind === 'router' && {
      nft: rulesOf(device, passesSelfAssigned),
      proxyArp: device.proxyArp === true ? SEGMENTS.filter((id) => isOn(device, id)) : [],
    }),
  };
}

function ipLines(device: Device): readonly string[] {
  const { interfaces, routes = [], gateway } = device;
  const usable = interfaces.filter(({ address }) => !isBlank(address));
  const first = usable[0];
  return [
    ...usable.map(
      ({ segment, address, mask }) => `addr add ${showAddress(address)}/${mask.prefix} dev ${segment}`,
    ),
    ...routes.map((route) => `route add ${showBlock(route)} via ${showAddress(route.via)}`),
    ...(gateway && !isBlank(gateway) ? gatewayLines(gateway, device, first?.segment) : []),
  ];
}

/** The second line stands for firmware that takes any gateway; refused ("File exists") where the first was taken. */
function gatewayLines(gateway: Address, device: Device, first: string | undefined): readonly string[] {
  const line = `route add default via ${showAddress(gateway)}`;
  const takesAny = device.takesOutsideGateway === true && first !== undefined;
  return takesAny ? [line, `${line} dev ${first} onlink`] : [line];
}

/** A home router's rules, and that nobody passes self-assigned addresses on, which Linux does. */
function rulesOf({ natOn, dropsUnasked, keepsApart = [] }: Router, passesSelfAssigned: boolean): string {
  const apart = keepsApart.flatMap(([one, other]) => [
    `iifname "${one}" oifname "${other}" drop`,
    `iifname "${other}" oifname "${one}" drop`,
  ]);
  const forward = [
    'type filter hook forward priority 0',
    ...(passesSelfAssigned ? [] : ['ip saddr 169.254.0.0/16 drop', 'ip daddr 169.254.0.0/16 drop']),
    ...(dropsUnasked === true ? ['ct state invalid drop'] : []),
    ...apart,
  ];
  const post = [
    'type nat hook postrouting priority 100',
    `iifname != "${natOn}" oifname "${natOn}" masquerade`,
  ];
  return `table ip walk {\n${chain('forward', forward)}${natOn === undefined ? '' : chain('post', post)}}\n`;
}

function chain(name: string, lines: readonly string[]): string {
  return `chain ${name} {\n${lines.map((line) => `${line};\n`).join('')}}\n`;
}

function isOn(device: Device, segment: string): boolean {
  return device.interfaces.some((one) => one.segment === segment);
}
