import type { Device } from '../../../src/arithmetic/walk/site.js';
import { differences } from './compare.js';
import { type Network, requestOf } from './network.js';
import type { Pool } from './pool.js';

const OPTIONAL = [
  'gateway',
  'routes',
  'takesOutsideGateway',
  'natOn',
  'proxyArp',
  'dropsUnasked',
  'keepsApart',
] as const;

/** The smallest network, by leaving out one thing after another, in which walk and kernel still differ. */
export async function shrink(network: Network, pool: Pool): Promise<Network> {
  for (const smaller of smallerOnes(network)) {
    if (await differs(smaller, pool)) return shrink(smaller, pool);
  }
  return network;
}

/** What a person needs to see of it: the lines for `ip` and the rules, by device. */
export function showNetwork(network: Network): string {
  return JSON.stringify(requestOf(network));
}

async function differs(network: Network, pool: Pool): Promise<boolean> {
  const answer = await pool.ask(network, true);
  return differences(network, answer).some((one) => one.differences.length > 0);
}

function* smallerOnes({ site, probes, ...rest }: Network): Generator<Network> {
  if (probes.length > 1) for (const probe of probes) yield { ...rest, site, probes: [probe] };
  const used = new Set(probes.flat());
  for (const gone of site.devices.filter(({ id }) => !used.has(id))) {
    yield { ...rest, probes, site: { ...site, devices: site.devices.filter(({ id }) => id !== gone.id) } };
  }
  for (const segment of site.segments.filter(({ isolated }) => isolated)) {
    const open = site.segments.map((one) => (one === segment ? { ...one, isolated: false } : one));
    yield { ...rest, probes, site: { ...site, segments: open } };
  }
  for (const device of site.devices) {
    for (const simpler of simplerOnes(device)) {
      const devices = site.devices.map((one) => (one === device ? simpler : one));
      yield { ...rest, probes, site: { ...site, devices } };
    }
  }
}

function* simplerOnes(device: Device): Generator<Device> {
  for (const key of OPTIONAL) {
    if (!(key in device)) continue;
    const { [key]: _, ...simpler } = device as unknown as Record<string, unknown>;
    yield simpler as unknown as Device;
  }
  if (device.interfaces.length < 2) return;
  for (const gone of device.interfaces) {
    yield { ...device, interfaces: device.interfaces.filter((one) => one !== gone) };
  }
}
