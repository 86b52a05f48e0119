import { type Address, showAddress } from '../values/address.js';
import type { Adapter, AdapterAddress, At, Seen } from './seen.js';

/**
 * Adapters that several outputs tell of, joined by name: what `ip addr` says of its address, a default route of its
 * gateway, and what stands for the whole computer of its DNS servers, where only one adapter can be meant.
 */
export function united(seen: Seen): Seen {
  const adapters: Adapter[] = [];
  for (const one of seen.adapters) {
    const at = one.name === '' ? -1 : adapters.findIndex((other) => isSame(one, other));
    const other = adapters[at];
    if (other === undefined) adapters.push(one);
    else adapters[at] = joined(other, one);
  }
  const routed = adapters.map((adapter) => withRoutes(adapter, seen));
  const open = routed.filter(({ owner, gateways }) => owner === 'computer' && gateways.length > 0);
  return {
    ...seen,
    adapters: routed.map((adapter) =>
      open.length === 1 && open[0] === adapter ? withDns(adapter, seen) : adapter,
    ),
  };
}

function isSame(one: Adapter, other: Adapter): boolean {
  return one.name === other.name && one.owner === other.owner;
}

function joined(first: Adapter, second: Adapter): Adapter {
  return {
    ...second,
    ...first,
    kind: first.kind === 'unknown' ? second.kind : first.kind,
    addresses: distinct(
      maskedFirst([...first.addresses, ...second.addresses]),
      ({ address }) => address.bits,
    ),
    addresses6: [...first.addresses6, ...second.addresses6],
    gateways: distinct([...first.gateways, ...second.gateways], ({ value }) => value.bits),
    gateways6: [...first.gateways6, ...second.gateways6],
    dns: distinct([...first.dns, ...second.dns], ({ value }) => value.bits),
    dns6: [...first.dns6, ...second.dns6],
  };
}

/** Each in its place, but with the mask that another output gives the same address. */
function maskedFirst(all: readonly AdapterAddress[]): readonly AdapterAddress[] {
  return all.map((one) =>
    one.mask ? one : (all.find(({ address, mask }) => mask && address.bits === one.address.bits) ?? one),
  );
}

/** The first of what is the same; the earlier output says it with more around it. */
function distinct<T>(all: readonly T[], key: (one: T) => number): readonly T[] {
  const keys = all.map(key);
  return all.filter((one, at) => keys.indexOf(key(one)) === at);
}

function withRoutes(adapter: Adapter, { routes }: Seen): Adapter {
  const more = routes.flatMap(({ mask, via, adapter: name, line }): At<Address>[] =>
    mask.prefix === 0 && via !== undefined && leadsOut(adapter, name) ? [{ value: via, line }] : [],
  );
  return { ...adapter, gateways: distinct([...adapter.gateways, ...more], ({ value }) => value.bits) };
}

/** Windows names an adapter in its routing table by its address. */
function leadsOut({ owner, name, addresses }: Adapter, route: string | undefined): boolean {
  if (owner !== 'computer' || route === undefined) return false;
  return route === name || addresses.some(({ address }) => showAddress(address) === route);
}

function withDns(adapter: Adapter, { dns }: Seen): Adapter {
  return { ...adapter, dns: distinct([...adapter.dns, ...dns], ({ value }) => value.bits) };
}
