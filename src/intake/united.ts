import { type Address, showAddress } from '../values/address.js';
import type { Adapter, AdapterAddress, At, Seen } from './seen.js';

/**
 * Adapters that several outputs tell of, joined by name: what `ip addr` says of its address, a default route of its
 * gateway, and what stands for the whole computer of its DNS servers, where only one adapter can be meant.
 */
export function united(seen: Seen): Seen {
  const groups = new Map<string, [Adapter, ...Adapter[]]>();
  for (const [at, one] of seen.adapters.entries()) {
    const key = one.name === '' ? `${at}` : `${one.owner} ${one.name}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  const ways = waysOut(seen);
  const routed = [...groups.values()].map((group) => withRoutes(joined(group), ways));
  const open = routed.filter(({ owner, gateways }) => owner === 'computer' && gateways.length > 0);
  return {
    ...seen,
    adapters: routed.map((adapter) =>
      open.length === 1 && open[0] === adapter ? withDns(adapter, seen) : adapter,
    ),
  };
}

/** What one says the others need not; lists are put together. */
function joined(group: readonly [Adapter, ...Adapter[]]): Adapter {
  const [first] = group;
  if (group.length === 1) return first;
  return {
    ...group.reduceRight((later, one) => Object.assign(later, one), { ...first }),
    kind: group.find(({ kind }) => kind !== 'unknown')?.kind ?? 'unknown',
    addresses: distinct(
      maskedFirst(group.flatMap(({ addresses }) => addresses)),
      ({ address }) => address.bits,
    ),
    addresses6: group.flatMap(({ addresses6 }) => addresses6),
    gateways: distinct(
      group.flatMap(({ gateways }) => gateways),
      ({ value }) => value.bits,
    ),
    gateways6: group.flatMap(({ gateways6 }) => gateways6),
    dns: distinct(
      group.flatMap(({ dns }) => dns),
      ({ value }) => value.bits,
    ),
    dns6: group.flatMap(({ dns6 }) => dns6),
  };
}

/** Each in its place, but with the mask that another output gives the same address. */
function maskedFirst(all: readonly AdapterAddress[]): readonly AdapterAddress[] {
  const masked = new Map<number, AdapterAddress>();
  for (const one of all) if (one.mask && !masked.has(one.address.bits)) masked.set(one.address.bits, one);
  return all.map((one) => (one.mask ? one : (masked.get(one.address.bits) ?? one)));
}

/** The first of what is the same; the earlier output says it with more around it. */
function distinct<T>(all: readonly T[], key: (one: T) => number): readonly T[] {
  const first = new Map<number, T>();
  for (const one of all) if (!first.has(key(one))) first.set(key(one), one);
  return [...first.values()];
}

/** The gateways of default routes, by what the route leads out of. */
function waysOut({ routes }: Seen): ReadonlyMap<string, readonly At<Address>[]> {
  const ways = new Map<string, Map<number, At<Address>>>();
  for (const { mask, via, adapter, line } of routes) {
    if (mask.prefix !== 0 || via === undefined || adapter === undefined) continue;
    const known = ways.get(adapter) ?? new Map<number, At<Address>>();
    ways.set(adapter, known);
    if (!known.has(via.bits)) known.set(via.bits, { value: via, line });
  }
  return new Map([...ways].map(([name, known]) => [name, [...known.values()]]));
}

/** Windows names an adapter in its routing table by its address. */
function withRoutes(adapter: Adapter, ways: ReadonlyMap<string, readonly At<Address>[]>): Adapter {
  const { owner, name, addresses, gateways } = adapter;
  if (owner !== 'computer' || ways.size === 0) return adapter;
  const names = new Set([name, ...addresses.map(({ address }) => showAddress(address))]);
  const more = [...names].flatMap((one) => ways.get(one) ?? []).sort((one, other) => one.line - other.line);
  return { ...adapter, gateways: distinct([...gateways, ...more], ({ value }) => value.bits) };
}

function withDns(adapter: Adapter, { dns }: Seen): Adapter {
  return { ...adapter, dns: distinct([...adapter.dns, ...dns], ({ value }) => value.bits) };
}
