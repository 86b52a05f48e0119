import type { Address } from '../values/address.js';
import { showAddress } from '../values/address.js';
import type { Mask } from '../values/mask.js';
import { showMask } from '../values/mask.js';
import { inRange } from './in-range.js';
import type { Adapter, At, Ping, Seen } from './seen.js';

/**
 * What a question may say that it reads. A text, a number or yes and no; the words that an observation can read stand
 * behind it, and a question that reads it has to know them all.
 */
export const OBSERVATIONS = {
  'computer.address': 'address',
  'computer.mask': 'mask',
  'computer.by-hand': 'yes-no',
  'computer.links': ['lead', 'wifi', 'both', 'tunnel'],
  'router.address': 'address',
  'router.mask': 'mask',
  'site.second-router': 'yes-no',
  'camera.address': 'address',
  'camera.mask': 'mask',
  'camera.gateway': 'address',
  'camera.dns': 'address',
  'camera.set-by': ['automatic', 'fixed'],
  'camera.mask-same': 'yes-no',
  'camera.gateway-same': 'yes-no',
  'camera.answers': 'yes-no',
  'camera.loss': 'number',
  'phone.same-range': 'yes-no',
} as const satisfies Readonly<Record<string, 'address' | 'mask' | 'yes-no' | 'number' | readonly string[]>>;

/** The same as a map, for what only knows names. */
export const OBSERVATION_SHAPES: ReadonlyMap<string, string | readonly string[]> = new Map(
  Object.entries(OBSERVATIONS),
);

export type ObservationId = keyof typeof OBSERVATIONS;

/** One thing read from a text, as an answer would be kept, with the line it stands on. */
export interface Observation {
  readonly id: ObservationId;
  readonly value: string | number | boolean;
  readonly line: number;
}

/** Whose numbers are whose, where the text does not say so itself. */
export interface Sight {
  /** The adapter of the computer that leads to the camera, by its place in `Seen`. */
  readonly adapter?: number;
  /** The camera's address, where it is known from elsewhere. */
  readonly camera?: Address;
}

/**
 * What a text tells, one observation each at most. `seen` as `united` gives it. Of several cameras in one text none is
 * taken for the one of the call, unless its address is known.
 */
export function observationsIn(seen: Seen, sight: Sight): readonly Observation[] {
  const computer = sight.adapter === undefined ? undefined : seen.adapters[sight.adapter];
  const camera = ownCamera(seen, sight);
  const address = camera?.addresses[0]?.address ?? sight.camera;
  return [
    ...ofComputer(computer),
    ...ofLinks(seen),
    ...ofRouter(seen, computer),
    ...ofServer(computer),
    ...ofCamera(camera, computer),
    ...ofPings(seen, address),
    ...ofPhone(seen, address),
  ];
}

function ownCamera({ adapters }: Seen, { camera }: Sight): Adapter | undefined {
  const all = adapters.filter(({ owner }) => owner === 'camera');
  const known = all.find(({ addresses }) => addresses.some(({ address }) => address.bits === camera?.bits));
  return known ?? (all.length === 1 ? all[0] : undefined);
}

function ofComputer(computer: Adapter | undefined): readonly Observation[] {
  const first = computer?.addresses[0];
  return [
    ...(first ? [seenAt('computer.address', showAddress(first.address), first.line)] : []),
    ...(first?.mask ? [seenAt('computer.mask', showMask(first.mask), first.line)] : []),
    ...yesNo('computer.by-hand', computer?.isByHand),
  ];
}

/** How the computer hangs on the network; a VPN that is up hides the site from it. */
function ofLinks({ adapters }: Seen): readonly Observation[] {
  const up = adapters.filter(
    ({ owner, isUp, addresses }) =>
      owner === 'computer' && isUp?.value !== false && addresses.some(({ address }) => address.bits !== 0),
  );
  const lineOf = (kind: Adapter['kind']): number | undefined =>
    up.find((one) => one.kind === kind)?.addresses[0]?.line;
  const [tunnel, lead, wifi] = [lineOf('vpn'), lineOf('lead'), lineOf('wifi')];
  if (tunnel !== undefined) return [seenAt('computer.links', 'tunnel', tunnel)];
  if (lead !== undefined && wifi !== undefined)
    return [seenAt('computer.links', 'both', Math.min(lead, wifi))];
  if (lead !== undefined) return [seenAt('computer.links', 'lead', lead)];
  return wifi === undefined ? [] : [seenAt('computer.links', 'wifi', wifi)];
}

function ofRouter({ adapters }: Seen, computer: Adapter | undefined): readonly Observation[] {
  const own = adapters.find(({ owner }) => owner === 'router')?.addresses[0];
  const gateway = routerOf(computer);
  if (own)
    return [
      seenAt('router.address', showAddress(own.address), own.line),
      ...(own.mask ? [seenAt('router.mask', showMask(own.mask), own.line)] : []),
    ];
  const [first] = computer?.addresses ?? [];
  // Whoever gets an address from the router gets the router's mask with it.
  const given = computer?.isByHand?.value === false ? first : undefined;
  return [
    ...(gateway ? [seenAt('router.address', showAddress(gateway.value), gateway.line)] : []),
    ...(gateway && given?.mask ? [seenAt('router.mask', showMask(given.mask), given.line)] : []),
  ];
}

/** Who hands out addresses without being the way out is a second box; that there is none, no text proves. */
function ofServer(computer: Adapter | undefined): readonly Observation[] {
  const server = computer?.dhcpServer;
  const gateway = routerOf(computer);
  return server && gateway && server.value.bits !== gateway.value.bits
    ? [seenAt('site.second-router', true, server.line)]
    : [];
}

/** The gateway of a computer is the router where it can be: not one that was typed in, nor one out of its range. */
function routerOf(computer: Adapter | undefined): At<Address> | undefined {
  const gateway = computer?.gateways[0];
  if (computer === undefined || gateway === undefined || computer.isByHand?.value === true) return undefined;
  const reaches = computer.addresses.some(
    ({ address, mask }) => mask && inRange(address, mask, gateway.value),
  );
  return reaches ? gateway : undefined;
}

function ofCamera(camera: Adapter | undefined, computer: Adapter | undefined): readonly Observation[] {
  const first = camera?.addresses[0];
  const gateway = camera?.gateways[0];
  const router = routerOf(computer);
  const own = computer?.addresses[0]?.mask;
  return [
    ...(first ? [seenAt('camera.address', showAddress(first.address), first.line)] : []),
    ...(first?.mask ? [seenAt('camera.mask', showMask(first.mask), first.line)] : []),
    ...(gateway ? [seenAt('camera.gateway', showAddress(gateway.value), gateway.line)] : []),
    ...(camera?.dns[0] ? [seenAt('camera.dns', showAddress(camera.dns[0].value), camera.dns[0].line)] : []),
    ...(camera?.isByHand
      ? [seenAt('camera.set-by', camera.isByHand.value ? 'fixed' : 'automatic', camera.isByHand.line)]
      : []),
    ...(first?.mask && own ? [seenAt('camera.mask-same', isSameMask(first.mask, own), first.line)] : []),
    ...(gateway && router
      ? [seenAt('camera.gateway-same', gateway.value.bits === router.value.bits, gateway.line)]
      : []),
  ];
}

/** The last ping of the camera counts: people try until it works, or until they give up. */
function ofPings({ pings }: Seen, camera: Address | undefined): readonly Observation[] {
  const ping = pings.filter((one) => camera !== undefined && targetOf(one) === showAddress(camera)).at(-1);
  if (!ping || ping.sent === 0) return [];
  const lost = Math.round((100 * (ping.sent - Math.min(ping.sent, ping.received))) / ping.sent);
  return [
    seenAt('camera.answers', ping.received > 0, ping.line),
    // Four pings say whether it answers, not how many get lost.
    ...(ping.received > 0 && ping.sent >= ENOUGH_PINGS
      ? [seenAt('camera.loss', Math.min(lost, 99), ping.line)]
      : []),
  ];
}

/** From so many on a share is worth a number; common practice, no source. */
const ENOUGH_PINGS = 20;

function targetOf({ address, target }: Ping): string {
  return address ? showAddress(address) : target;
}

/** Whether the first three numbers are the same, as the question puts it. */
function ofPhone({ adapters }: Seen, camera: Address | undefined): readonly Observation[] {
  const phone = adapters.find(({ owner }) => owner === 'phone')?.addresses[0];
  if (!phone || !camera) return [];
  const isSame = Math.floor(phone.address.bits / 256) === Math.floor(camera.bits / 256);
  return [seenAt('phone.same-range', isSame, phone.line)];
}

function isSameMask(one: Mask, other: Mask): boolean {
  return one.prefix === other.prefix;
}

function yesNo(id: ObservationId, found: At<boolean> | undefined): readonly Observation[] {
  return found ? [seenAt(id, found.value, found.line)] : [];
}

function seenAt(id: ObservationId, value: Observation['value'], line: number): Observation {
  return { id, value, line };
}
