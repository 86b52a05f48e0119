import { parseAddress, showAddress } from '../../values/address.js';
import { parseMask, showMask } from '../../values/mask.js';
import { ok } from '../../values/result.js';
import { addressKind } from '../address-kind.js';
import { gatewayStanding } from '../gateway-outside-subnet.js';
import { hostStanding } from '../host-standing.js';
import { sameSubnet, subnetOf } from '../subnet.js';
import { needed, optional, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** The network of one address and mask: its ends, and whether a gateway and another device are inside. */
export const SUBNET: Topic = {
  id: 'subnet',
  title: 'reckon.subnet',
  inputs: [
    { id: 'address', ask: 'reckon.ask-address' },
    { id: 'mask', ask: 'reckon.ask-mask' },
    { id: 'gateway', ask: 'reckon.ask-gateway', optional: true },
    { id: 'other', ask: 'reckon.ask-other', optional: true },
  ],
  reckon,
};

const READS = {
  address: needed(parseAddress),
  mask: needed(parseMask),
  gateway: optional(parseAddress, undefined),
  other: optional(parseAddress, undefined),
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { address, mask, gateway, other } = read.value;
  const host = hostStanding(address, mask);
  const kind = addressKind(address);
  const gate = gateway && gatewayStanding(address, mask, gateway);
  const isOtherInside = other && sameSubnet(address, mask, other);
  const subnet = subnetOf(address, mask);
  const isFine = host.value === 'host' && (gate === undefined || gate.value === 'inside');
  return ok({
    verdict: isFine ? 'fine' : 'impossible',
    lines: [
      ...host.lines,
      ...kind.lines,
      ...(gate ? gate.lines.slice(-1) : []),
      ...(other
        ? [
            {
              id: isOtherInside ? 'subnet.inside' : 'subnet.outside',
              with: { other: showAddress(other) },
            } as const,
          ]
        : []),
    ],
    data: {
      address: showAddress(address),
      mask: showMask(mask),
      prefix: mask.prefix,
      network: showAddress(subnet.network),
      broadcast: showAddress(subnet.broadcast),
      firstHost: showAddress(subnet.first),
      lastHost: showAddress(subnet.last),
      hosts: subnet.hosts,
      standing: host.value,
      kind: kind.value,
      ...(gate && { gateway: gate.value }),
      ...(other && { other: isOtherInside ? 'inside' : 'outside' }),
    },
  });
}
