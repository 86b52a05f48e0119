import type { AnswerValue } from '../answers/answer.js';
import { addressKind } from '../arithmetic/address-kind.js';
import { dnsStanding } from '../arithmetic/dns-standing.js';
import { gatewayIsRouter } from '../arithmetic/gateway-is-router.js';
import { gatewayStanding } from '../arithmetic/gateway-outside-subnet.js';
import { hostStanding } from '../arithmetic/host-standing.js';
import { lossOfAHundred } from '../arithmetic/loss/loss-of-a-hundred.js';
import { freeAddress } from '../arithmetic/proposals/free-address.js';
import { temporaryAddress } from '../arithmetic/proposals/temporary-address.js';
import { sameAddress } from '../arithmetic/same-address.js';
import { sameRange } from '../arithmetic/same-range.js';
import { seenAsNeighbour } from '../arithmetic/seen-as-neighbour.js';
import { siteOf } from '../arithmetic/topics/reach-site.js';
import type { Topic } from '../arithmetic/topics/topic.js';
import { TOPICS } from '../arithmetic/topics/topics.js';
import { bothWays } from '../arithmetic/walk/both-ways.js';
import type { Worked } from '../arithmetic/worked.js';
import type { Scalar } from '../rulebase/condition.js';
import { type Address, isBlank, showAddress } from '../values/address.js';
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

const WAYS = {
  both: 'both',
  'only-first': 'only-computer',
  'only-second': 'only-camera',
  neither: 'neither',
} as const;

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
  /** Camera address, mask, gateway; computer address, mask; router address, mask. */
  'camera-and-computer-reach': (inputs) => {
    const [own, net, gateway, theirs, theirNet] = [
      address(inputs, 0),
      mask(inputs, 1),
      address(inputs, 2),
      address(inputs, 3),
      mask(inputs, 4),
    ];
    const [router, routerNet] = [address(inputs, 5), mask(inputs, 6)];
    if (!own || !net || !gateway || !theirs || !theirNet || !router || !routerNet) return undefined;
    if (isBlank(own) || isBlank(theirs) || isBlank(router)) return undefined;
    const site = siteOf({
      camera: { address: own, mask: net, gateway },
      computer: { address: theirs, mask: theirNet, gateway: router },
      router: { address: router, mask: routerNet },
      segments: 'same',
      isIsolated: false,
      isStateful: true,
    });
    const { ways, lines } = bothWays(site, 'computer', 'camera');
    return { value: WAYS[ways], lines };
  },
  /** Camera address, computer address: the computer's for a while. */
  'address-for-computer': (inputs) => {
    const [camera, computer] = [address(inputs, 0), address(inputs, 1)];
    if (!camera || !computer) return undefined;
    const { value, lines, cautions, setUp, putBack } = temporaryAddress(camera, undefined, [computer]);
    return (
      value && { value: showAddress(value.address), lines: [...lines, ...cautions, ...setUp, ...putBack] }
    );
  },
  /** Router address, router mask, and devices that are known to be there. */
  'address-for-camera': (inputs) => {
    const [router, net] = [address(inputs, 0), mask(inputs, 1)];
    if (!router || !net || isBlank(router)) return undefined;
    const known = inputs.flatMap((input) => (input.kind === 'address' ? [input.address] : []));
    const { value, lines, checks } = freeAddress(router, net, undefined, undefined, known);
    return value && { value: showAddress(value.address), lines: [...lines, ...checks] };
  },
  /** Lost pings in per cent, of the hundred that were asked for. */
  'loss-of-a-hundred': (inputs) => {
    const share = inputs[0];
    return share?.kind === 'number' ? lossOfAHundred(share.number) : undefined;
  },
  'same-address': (inputs) => {
    const [a, b] = [address(inputs, 0), address(inputs, 1)];
    return a && b && !isBlank(a) && !isBlank(b) ? sameAddress(a, b) : undefined;
  },
};

/** Topics of sums by id: a fact may name one, and gets its verdict or one of its numbers. */
const BY_ID: ReadonlyMap<string, Topic> = new Map(TOPICS.map((topic) => [topic.id, topic]));

/** The names a fact record may use in `sum`, sorted. */
export const SUM_NAMES: readonly string[] = [...Object.keys(SUMS), ...BY_ID.keys()].sort();

/** The topics a fact record may name, each with its inputs. */
export const TOPIC_INPUTS: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  TOPICS.map(({ id, inputs }) => [id, new Set(inputs.map((input) => input.id))]),
);

/**
 * Works a topic on texts by input name. Gives its verdict, or what stands in its data under `field`; `undefined`
 * where the topic refuses an input, or has nothing of the kind to say.
 */
export function workTopic(
  id: string,
  given: Readonly<Record<string, string>>,
  field?: string,
): Worked<Scalar> | undefined {
  const result = BY_ID.get(id)?.reckon(given);
  if (!result?.ok) return undefined;
  const { verdict, data, lines } = result.value;
  const value = field === undefined ? verdict : data[field];
  const isScalar = typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
  return isScalar ? { value, lines } : undefined;
}

/** Works the named sum. `undefined` where an input is missing, of another kind, or an empty field. */
export function workSum(name: string, inputs: Inputs): Worked<Scalar> | undefined {
  return Object.hasOwn(SUMS, name) ? SUMS[name]?.(inputs) : undefined;
}
