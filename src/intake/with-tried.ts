import type { Paste } from './paste.js';
import type { Adapter, Ping, Seen } from './seen.js';

/** What was tried after a text was read: each finding on the line of `words` that its `line` counts to, from 1. */
export interface Tried extends Partial<Pick<Seen, 'pings' | 'ports' | 'lookups'>> {
  readonly adapters?: readonly Adapter[];
  readonly words: readonly string[];
}

/** A text with what was tried added behind it, so that each finding has a line to be looked up on. */
export function withTried(paste: Paste, tried: Tried): Paste {
  if (tried.words.length === 0) return paste;
  const above = paste.text === '' ? 0 : paste.text.split('\n').length;
  const { reading } = paste;
  const { seen } = reading;
  return {
    ...paste,
    text: [...(above === 0 ? [] : [paste.text]), ...tried.words].join('\n'),
    reading: {
      ...reading,
      seen: {
        ...seen,
        adapters: [...seen.adapters, ...(tried.adapters ?? []).map((one) => adapterLower(one, above))],
        pings: [...seen.pings, ...(tried.pings ?? []).map((one) => pingLower(one, above))],
        ports: [...seen.ports, ...(tried.ports ?? []).map((one) => lower(one, above))],
        lookups: [...seen.lookups, ...(tried.lookups ?? []).map((one) => lower(one, above))],
      },
    },
  };
}

function lower<T extends { readonly line: number }>(one: T, by: number): T {
  return { ...one, line: one.line + by };
}

function pingLower(ping: Ping, by: number): Ping {
  return { ...lower(ping, by), troubles: ping.troubles.map((trouble) => lower(trouble, by)) };
}

function adapterLower(adapter: Adapter, by: number): Adapter {
  return { ...adapter, addresses: adapter.addresses.map((address) => lower(address, by)) };
}
