import { inWords, say } from '../messages/say.js';
import { showAddress } from '../values/address.js';
import { describe, type Probe, type Probed } from './probes.js';

/** What came of each probe, in the order of the list and a line each; what could not be done says so. */
export function resultLines(probes: readonly Probe[], probed: Probed): readonly string[] {
  return probes.map((probe, at) => resultOf(probed, at + 1) ?? notDone(probe));
}

function notDone(probe: Probe): string {
  const words = inWords(describe(probe));
  return probe.kind === 'refused' ? words : say('here.not-tried', { probe: words });
}

function resultOf({ pings = [], ports = [], lookups = [] }: Probed, line: number): string | undefined {
  const isOn = (one: { readonly line: number }): boolean => one.line === line;
  const [ping, port, lookup] = [pings.find(isOn), ports.find(isOn), lookups.find(isOn)];
  if (ping) {
    const target = ping.address ? showAddress(ping.address) : ping.target;
    return say('paste.ping', { target, sent: ping.sent, received: ping.received });
  }
  if (port)
    return say(port.isOpen ? 'paste.port-open' : 'paste.port-closed', {
      target: port.target,
      port: port.port,
    });
  if (lookup === undefined) return undefined;
  const { name, addresses } = lookup;
  return addresses.length === 0
    ? say('paste.lookup-none', { name })
    : say('paste.lookup', { name, addresses: addresses.map(showAddress).join(', ') });
}
