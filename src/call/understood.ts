import { splitLines } from '../intake/line-ends.js';
import type { Paste } from '../intake/paste.js';
import type { Adapter, Seen } from '../intake/seen.js';
import { say } from '../messages/say.js';
import { showAddress } from '../values/address.js';
import { showMask } from '../values/mask.js';
import { nameOf } from './adapter-name.js';
import { noticed } from './noticed.js';

/** What was understood of a pasted text, line by line, before any of it is used. */
export function understood(paste: Paste): readonly string[] {
  const { reading, dropped } = paste;
  const { seen, unread } = reading;
  const found = [...seen.adapters.map(adapterLine), ...otherLines(seen)];
  const all = splitLines(paste.text).filter((line) => line.trim() !== '').length;
  return [
    ...(found.length === 0
      ? [say('paste.nothing')]
      : [say('paste.heading'), ...found.map((line) => `  ${line}`)]),
    ...wayLines(paste),
    ...noticed(seen),
    ...(unread.length === 0 ? [] : [say('paste.unread', { count: unread.length, lines: all })]),
    ...(dropped === 0 ? [] : [say('paste.dropped', { count: dropped })]),
  ];
}

function adapterLine(adapter: Adapter): string {
  const { owner, name } = adapter;
  const line = adapter.addresses[0]?.line ?? adapter.gateways[0]?.line;
  const values = [...valuesOf(adapter), ...(line === undefined ? [] : [say('paste.line', { line })])]
    .join(', ')
    .replace(', (', ' (');
  const whose = say(`paste.owner-${owner}`);
  if (name === '') return say('paste.adapter-nameless', { owner: whose, values });
  // A retyped camera often calls itself one.
  if (name.toLowerCase().startsWith(whose.toLowerCase()))
    return say('paste.adapter-nameless', { owner: nameOf(adapter), values });
  return say('paste.adapter', { owner: whose, name: nameOf(adapter), values });
}

/** What is known of one adapter, in words. */
export function valuesOf({
  kind,
  isUp,
  addresses,
  gateways,
  dns,
  isByHand,
  dhcpServer,
}: Adapter): readonly string[] {
  return [
    ...(kind === 'unknown' ? [] : [say(`paste.kind-${kind}`)]),
    ...(isUp?.value === false ? [say('paste.is-down')] : []),
    ...(addresses.length === 0 ? [say('paste.no-address')] : []),
    ...addresses.flatMap(({ address, mask }) => [
      say('paste.address', { address: showAddress(address) }),
      ...(mask ? [say('paste.mask', { mask: showMask(mask) })] : []),
    ]),
    ...gateways.map(({ value }) => say('paste.gateway', { address: showAddress(value) })),
    ...dns.map(({ value }) => say('paste.dns', { address: showAddress(value) })),
    ...(isByHand && addresses.length > 0 ? [say(isByHand.value ? 'paste.by-hand' : 'paste.automatic')] : []),
    ...(dhcpServer ? [say('paste.dhcp-server', { address: showAddress(dhcpServer.value) })] : []),
  ];
}

function otherLines({ pings, traces, lookups, ports, neighbours }: Seen): readonly string[] {
  return [
    ...pings.map(({ target, address, sent, received }) =>
      say('paste.ping', { target: address ? showAddress(address) : target, sent, received }),
    ),
    ...traces.map(({ target, address, hops }) =>
      say('paste.trace', {
        target: address ? showAddress(address) : target,
        hops: hops.filter((hop) => hop.address !== undefined).length,
      }),
    ),
    ...lookups.map(({ name, addresses }) =>
      addresses.length === 0
        ? say('paste.lookup-none', { name })
        : say('paste.lookup', { name, addresses: addresses.map(showAddress).join(', ') }),
    ),
    ...ports.map(({ target, port, isOpen }) =>
      say(isOpen ? 'paste.port-open' : 'paste.port-closed', { target, port }),
    ),
    ...(neighbours.length === 0 ? [] : [say('paste.neighbours', { count: neighbours.length })]),
  ];
}

function wayLines({ reading: { seen }, way }: Paste): readonly string[] {
  const own = seen.adapters.filter(({ owner }) => owner === 'computer');
  if (own.length === 0) return [];
  const chosen = way.adapter === undefined ? undefined : seen.adapters[way.adapter];
  const why = say(`paste.why-${way.why}`);
  return [
    chosen ? say('paste.way', { name: nameOf(chosen), why }) : why,
    ...way.passedOver.flatMap(({ index, why: because }) => {
      const adapter = seen.adapters[index];
      // The computer itself needs no excuse.
      return adapter && because !== 'loopback'
        ? [say(`paste.passed-${because}`, { name: nameOf(adapter) })]
        : [];
    }),
  ];
}
