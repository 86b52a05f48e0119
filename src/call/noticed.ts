import { addressKind } from '../arithmetic/address-kind.js';
import { gatewayStanding } from '../arithmetic/gateway-outside-subnet.js';
import { showBlock } from '../arithmetic/show-block.js';
import { sameSubnet } from '../arithmetic/subnet.js';
import type { Adapter, Seen } from '../intake/seen.js';
import { say } from '../messages/say.js';
import { showAddress } from '../values/address.js';
import { nameOf } from './adapter-name.js';

/** What stands out in a pasted text by itself, whatever the call is about. */
export function noticed(seen: Seen): readonly string[] {
  const up = seen.adapters.filter(
    ({ owner, kind, isUp, addresses }) =>
      owner === 'computer' && kind !== 'loopback' && isUp?.value !== false && addresses.length > 0,
  );
  return [
    ...up.filter(({ kind }) => kind === 'vpn').map((one) => say('paste.vpn-up', { name: nameOf(one) })),
    ...up.flatMap(selfAssigned),
    ...up.flatMap((one, at) => up.slice(at + 1).flatMap((other) => twoInRange(one, other))),
    ...up.flatMap(otherDhcp),
    ...up.flatMap(gatewayOutside),
    ...twoMacs(seen),
  ];
}

function selfAssigned(adapter: Adapter): readonly string[] {
  const own = adapter.addresses.find(({ address }) => addressKind(address).value === 'self-assigned');
  return own
    ? [say('paste.self-assigned', { name: nameOf(adapter), address: showAddress(own.address) })]
    : [];
}

function twoInRange(one: Adapter, other: Adapter): readonly string[] {
  const meet = one.addresses.some(({ address, mask }) =>
    other.addresses.some(
      (second) => mask !== undefined && mask.prefix > 0 && sameSubnet(address, mask, second.address),
    ),
  );
  return meet ? [say('paste.two-in-range', { first: nameOf(one), second: nameOf(other) })] : [];
}

function otherDhcp(adapter: Adapter): readonly string[] {
  const [server, gateway] = [adapter.dhcpServer?.value, adapter.gateways[0]?.value];
  if (!server || !gateway || server.bits === gateway.bits) return [];
  const filling = { name: nameOf(adapter), server: showAddress(server), gateway: showAddress(gateway) };
  return [say('paste.other-dhcp', filling)];
}

/** A computer with several addresses is fine as soon as one range holds its gateway. */
function gatewayOutside(adapter: Adapter): readonly string[] {
  const ranges = adapter.addresses.flatMap(({ address, mask }) => (mask ? [{ address, mask }] : []));
  const [gateway, first] = [adapter.gateways[0]?.value, ranges[0]];
  if (gateway === undefined || first === undefined) return [];
  const isOutside = ranges.every(
    ({ address, mask }) => gatewayStanding(address, mask, gateway).value === 'outside',
  );
  const filling = { name: nameOf(adapter), gateway: showAddress(gateway), range: showBlock(first) };
  return isOutside ? [say('paste.gateway-outside', filling)] : [];
}

/** Several MAC addresses for one IP address, out of ARP answers by hand or of two tables in one text. */
function twoMacs({ arps, neighbours }: Seen): readonly string[] {
  const byAddress = new Map<string, Set<string>>();
  const learn = (address: string, macs: readonly string[]): void => {
    const known = byAddress.get(address) ?? new Set<string>();
    for (const mac of macs) known.add(mac);
    byAddress.set(address, known);
  };
  for (const { address, macs } of arps) learn(showAddress(address), macs);
  for (const { address, mac } of neighbours) if (mac !== undefined) learn(showAddress(address), [mac]);
  return [...byAddress].flatMap(([address, macs]) =>
    macs.size > 1 ? [say('paste.two-macs', { address, macs: [...macs].join(', ') })] : [],
  );
}
