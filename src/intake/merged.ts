import type { Seen } from './seen.js';

/** The parts one behind the other, in the order in which they were read. */
export function merged(parts: readonly Partial<Seen>[]): Seen {
  return {
    adapters: parts.flatMap((part) => part.adapters ?? []),
    dns: parts.flatMap((part) => part.dns ?? []),
    neighbours: parts.flatMap((part) => part.neighbours ?? []),
    routes: parts.flatMap((part) => part.routes ?? []),
    pings: parts.flatMap((part) => part.pings ?? []),
    traces: parts.flatMap((part) => part.traces ?? []),
    lookups: parts.flatMap((part) => part.lookups ?? []),
    ports: parts.flatMap((part) => part.ports ?? []),
    arps: parts.flatMap((part) => part.arps ?? []),
  };
}
