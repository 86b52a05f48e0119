import { addressKind } from '../arithmetic/address-kind.js';
import { gatewayStanding } from '../arithmetic/gateway-outside-subnet.js';
import { showBlock } from '../arithmetic/show-block.js';
import type { Paste } from '../intake/paste.js';
import type { Adapter, Seen } from '../intake/seen.js';
import { say } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import { nameOf } from './adapter-name.js';

/** What to do first about the computer itself; where nothing is wrong with it, to go on with the call. */
export function nextForComputer({ reading: { seen }, way }: Paste): string {
  const adapter = way.adapter === undefined ? undefined : seen.adapters[way.adapter];
  if (adapter === undefined) return say(way.why === 'several' ? 'here.next-several' : 'here.next-no-network');
  return (
    selfAssigned(adapter) ??
    wrongGateway(adapter) ??
    silentGateway(adapter, seen) ??
    openTunnel(seen) ??
    say('here.next-call')
  );
}

function selfAssigned(adapter: Adapter): string | undefined {
  const own = adapter.addresses.find(({ address }) => addressKind(address).value === 'self-assigned');
  return own && adapter.addresses.length === 1
    ? say('here.next-self-assigned', { name: nameOf(adapter), address: showAddress(own.address) })
    : undefined;
}

function wrongGateway(adapter: Adapter): string | undefined {
  const [gateway] = adapter.gateways;
  if (gateway === undefined) return say('here.next-gateway-none', { name: nameOf(adapter) });
  const ranges = adapter.addresses.flatMap(({ address, mask }) =>
    mask === undefined ? [] : [{ address, mask }],
  );
  const [first] = ranges;
  const standings = ranges.map(({ address, mask }) => gatewayStanding(address, mask, gateway.value).value);
  if (first === undefined || standings.includes('inside')) return undefined;
  return say(`here.next-gateway-${standings.every((one) => one === 'outside') ? 'outside' : 'no-host'}`, {
    name: nameOf(adapter),
    gateway: showAddress(gateway.value),
    range: showBlock(first),
  });
}

/** Only what was tried and gave nothing at all: many routers keep quiet when they are pinged. */
function silentGateway(adapter: Adapter, seen: Seen): string | undefined {
  const gateway = adapter.gateways[0]?.value;
  if (gateway === undefined) return undefined;
  const pings = seen.pings.filter(({ address }) => isAt(gateway, address));
  const ports = seen.ports.filter(({ address }) => isAt(gateway, address));
  const isKnown = seen.neighbours.some(
    ({ address, mac, state }) => isAt(gateway, address) && mac !== undefined && state !== 'failed',
  );
  const isSilent = pings.length > 0 && pings.every(({ received }) => received === 0);
  if (!isSilent || isKnown || ports.some(({ isOpen }) => isOpen)) return undefined;
  return say('here.next-gateway-silent', { name: nameOf(adapter), gateway: showAddress(gateway) });
}

function openTunnel({ adapters }: Seen): string | undefined {
  const tunnel = adapters.find(
    ({ owner, kind, isUp, addresses }) =>
      owner === 'computer' && kind === 'vpn' && isUp?.value !== false && addresses.length > 0,
  );
  return tunnel && say('here.next-tunnel', { name: nameOf(tunnel) });
}

function isAt(one: Address, other: Address | undefined): boolean {
  return other !== undefined && other.bits === one.bits;
}
