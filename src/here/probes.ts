import type { Seen } from '../intake/seen.js';
import { inWords, type MessageId, type Sentence } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import { quoted } from '../values/tidy.js';
import { isHostName } from './host-name.js';
import { isAddress, isLocal } from './may-touch.js';
import type { Prober } from './prober.js';
import { type Got, tried } from './tried.js';

/** The ports of a camera's page, plain and encrypted, and of its stream (RFC 9110, RFC 7826). */
export const PORTS = [80, 443, 554] as const;
export type Port = (typeof PORTS)[number];
/** A router has no stream. */
const ROUTER_PORTS: readonly Port[] = [80, 443];

/** Whose address is tried. */
export type Site = 'camera' | 'router';

/** One thing to try, or the sentence why it is not. */
export type Probe =
  | { readonly kind: 'ping'; readonly site: Site; readonly address: Address }
  | { readonly kind: 'port'; readonly site: Site; readonly address: Address; readonly port: Port }
  | { readonly kind: 'lookup'; readonly name: string }
  | { readonly kind: 'refused'; readonly sentence: Sentence };

/** What is known of the site. */
export interface Targets {
  readonly camera?: Address | undefined;
  readonly router?: Address | undefined;
  readonly name?: string | undefined;
}

/** What the probes told. Each `line` is the place of the probe in the list, counted from 1. */
export interface Probed extends Partial<Seen> {
  /** The probes that this computer could not do, a sentence each. */
  readonly missed: readonly Sentence[];
}

/** What will be tried, and nothing else will: at most two addresses, both local ones, and one name. */
export function probesFor({ camera, router, name }: Targets): readonly Probe[] {
  const isOne = camera !== undefined && router !== undefined && camera.bits === router.bits;
  return [
    ...(camera === undefined ? [] : probesAt('camera', camera, PORTS)),
    ...(router === undefined || isOne ? [] : probesAt('router', router, ROUTER_PORTS)),
    ...(name === undefined ? [] : [lookupOf(name)]),
  ];
}

/** What a probe does, in words. */
export function describe(probe: Probe): Sentence {
  switch (probe.kind) {
    case 'ping':
      return { id: PING[probe.site], with: { address: showAddress(probe.address) } };
    case 'port':
      return { id: KNOCK[probe.site], with: { address: showAddress(probe.address), port: probe.port } };
    case 'lookup':
      return { id: 'here.lookup', with: { name: quoted(probe.name) } };
    case 'refused':
      return probe.sentence;
  }
}

/**
 * Does the probes, all at once. Each is looked at again: what `probesFor` would not have given is not done, whoever
 * made the list. Never throws.
 */
export async function runProbes(probes: readonly Probe[], prober: Prober): Promise<Probed> {
  const allowed = allowedOf(probes);
  const got = await Promise.all(
    allowed.map(async ({ probe, line }): Promise<Got> => {
      const nothing = {
        missed: [{ id: 'here.not-tried', with: { probe: inWords(describe(probe)) } }],
      } as const;
      return (await tried(probe, line, prober).catch(() => undefined)) ?? nothing;
    }),
  );
  return {
    pings: got.flatMap(({ pings }) => pings ?? []),
    ports: got.flatMap(({ ports }) => ports ?? []),
    lookups: got.flatMap(({ lookups }) => lookups ?? []),
    missed: got.flatMap(({ missed }) => missed ?? []),
  };
}

const PING = { camera: 'here.ping-camera', router: 'here.ping-router' } as const satisfies Record<
  Site,
  MessageId
>;
const KNOCK = { camera: 'here.port-camera', router: 'here.port-router' } as const satisfies Record<
  Site,
  MessageId
>;
const MOST_ADDRESSES = 2;

function probesAt(site: Site, address: Address, ports: readonly Port[]): readonly Probe[] {
  if (!isAddress(address)) return [{ kind: 'refused', sentence: { id: 'here.refused-number' } }];
  if (!isLocal(address)) {
    const sentence = { id: 'here.refused-address', with: { address: showAddress(address) } } as const;
    return [{ kind: 'refused', sentence }];
  }
  return [
    { kind: 'ping', site, address },
    ...ports.map((port): Probe => ({ kind: 'port', site, address, port })),
  ];
}

function lookupOf(name: string): Probe {
  return isHostName(name)
    ? { kind: 'lookup', name }
    : { kind: 'refused', sentence: { id: 'here.refused-name', with: { name: quoted(name) } } };
}

interface Allowed {
  readonly probe: Exclude<Probe, { readonly kind: 'refused' }>;
  readonly line: number;
}

/** The probes of at most two local addresses, known ports and one name, each once; each with its place in the list. */
function allowedOf(probes: readonly Probe[]): readonly Allowed[] {
  const addresses = new Set<number>();
  const done = new Set<string>();
  const once = (key: string): boolean => done.size < done.add(key).size;
  return probes.flatMap((probe, at): readonly Allowed[] => {
    const allowed = { line: at + 1 };
    if (probe.kind === 'refused') return [];
    if (probe.kind === 'lookup') {
      return isHostName(probe.name) && once('lookup') ? [{ ...allowed, probe }] : [];
    }
    if (!isLocal(probe.address)) return [];
    const { bits } = probe.address;
    if (!addresses.has(bits) && addresses.size === MOST_ADDRESSES) return [];
    if (probe.kind === 'port' && !PORTS.includes(probe.port)) return [];
    addresses.add(bits);
    return once(probe.kind === 'port' ? `${bits}:${probe.port}` : `${bits}`) ? [{ ...allowed, probe }] : [];
  });
}
