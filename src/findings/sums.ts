import type { AnswerValue } from '../answers/answer.js';
import { addressKind } from '../arithmetic/address-kind.js';
import { dnsStanding } from '../arithmetic/dns-standing.js';
import { gatewayIsRouter } from '../arithmetic/gateway-is-router.js';
import { gatewayStanding } from '../arithmetic/gateway-outside-subnet.js';
import { hostStanding } from '../arithmetic/host-standing.js';
import { sameAddress } from '../arithmetic/same-address.js';
import { sameRange } from '../arithmetic/same-range.js';
import { seenAsNeighbour } from '../arithmetic/seen-as-neighbour.js';
import type { Worked } from '../arithmetic/worked.js';
import type { Scalar } from '../rulebase/condition.js';
import { type Address, isBlank } from '../values/address.js';
import type { Mask } from '../values/mask.js';

type Inputs = readonly AnswerValue[];
type Sum = (inputs: Inputs) => Worked<Scalar> | undefined;

function address(inputs: Inputs, at: number): Address | undefined {
  const input = inputs[at];
  return input?.kind === 'address' ? input.address : undefined;
}

function mask(inputs: Inputs, at: number): Mask | undefined {
  const input = inputs[at];
  return input?.kind === 'mask' ? input.mask : undefined;
}

/** The sums that a fact record may name, each fed with the answers its `inputs` list, in that order. */
const SUMS: Readonly<Record<string, Sum>> = {
  'gateway-standing': (inputs) => {
    const [own, net, gateway] = [address(inputs, 0), mask(inputs, 1), address(inputs, 2)];
    return own && net && gateway && !isBlank(own) ? gatewayStanding(own, net, gateway) : undefined;
  },
  'seen-as-neighbour': (inputs) => {
    const [camera, cameraMask, computer, computerMask] = [
      address(inputs, 0),
      mask(inputs, 1),
      address(inputs, 2),
      mask(inputs, 3),
    ];
    if (!camera || !cameraMask || !computer || !computerMask || isBlank(camera) || isBlank(computer))
      return undefined;
    return seenAsNeighbour(camera, cameraMask, computer, computerMask);
  },
  'host-standing': (inputs) => {
    const [own, net] = [address(inputs, 0), mask(inputs, 1)];
    return own && net ? hostStanding(own, net) : undefined;
  },
  'address-kind': (inputs) => {
    const own = address(inputs, 0);
    return own && addressKind(own);
  },
  'gateway-is-router': (inputs) => {
    const [gateway, router] = [address(inputs, 0), address(inputs, 1)];
    return gateway && router && !isBlank(gateway) && !isBlank(router)
      ? gatewayIsRouter(gateway, router)
      : undefined;
  },
  'dns-standing': (inputs) => {
    const [dns, router, camera, net] = [
      address(inputs, 0),
      address(inputs, 1),
      address(inputs, 2),
      mask(inputs, 3),
    ];
    return dns && router && camera && net && !isBlank(camera)
      ? dnsStanding(dns, router, camera, net)
      : undefined;
  },
  'same-range': (inputs) => {
    const [camera, router, net] = [address(inputs, 0), address(inputs, 1), mask(inputs, 2)];
    return camera && router && net && !isBlank(camera) && !isBlank(router)
      ? sameRange(camera, router, net)
      : undefined;
  },
  'same-address': (inputs) => {
    const [a, b] = [address(inputs, 0), address(inputs, 1)];
    return a && b && !isBlank(a) && !isBlank(b) ? sameAddress(a, b) : undefined;
  },
};

/** The names a fact record may use in `sum`, sorted. */
export const SUM_NAMES: readonly string[] = Object.keys(SUMS).sort();

/** Works the named sum. `undefined` where an input is missing, of another kind, or an empty field. */
export function workSum(name: string, inputs: Inputs): Worked<Scalar> | undefined {
  return Object.hasOwn(SUMS, name) ? SUMS[name]?.(inputs) : undefined;
}
