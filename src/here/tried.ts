import { PARSERS } from '../intake/parsers.js';
import { read } from '../intake/read.js';
import type { Ping, Seen } from '../intake/seen.js';
import type { Sentence } from '../messages/say.js';
import { showAddress } from '../values/address.js';
import type { Prober } from './prober.js';
import type { Probe } from './probes.js';

/** What one probe told, or that it could not be done. */
export interface Got extends Pick<Partial<Seen>, 'pings' | 'ports' | 'lookups'> {
  readonly missed?: readonly Sentence[];
}

/** Does one probe; undefined where this computer could not. */
export async function tried(
  probe: Exclude<Probe, { readonly kind: 'refused' }>,
  line: number,
  prober: Prober,
): Promise<Got | undefined> {
  if (probe.kind === 'lookup') {
    return { lookups: [{ name: probe.name, ...(await prober.lookUp(probe.name)), line }] };
  }
  const { address } = probe;
  if (probe.kind === 'port') {
    const said = await prober.knock(address, probe.port);
    if (said === 'untried') return undefined;
    const target = showAddress(address);
    return { ports: [{ target, address, port: probe.port, isOpen: said === 'open', line }] };
  }
  const [ping] = read((await prober.ping(address)) ?? '', PARSERS).seen.pings;
  return ping === undefined || isUnsent(ping) ? undefined : { pings: [at(line, ping)] };
}

/** A ping that may not send, such as one without the right to, says nothing of the network. */
function isUnsent(ping: Ping): boolean {
  return ping.sent === 0 && ping.troubles.every(({ kind }) => kind === 'failed');
}

function at(line: number, ping: Ping): Ping {
  return { ...ping, line, troubles: ping.troubles.map((trouble) => ({ ...trouble, line })) };
}
