import type { MessageId } from '../../messages/say.js';
import { type Address, parseAddress, showAddress } from '../../values/address.js';
import { problem, type Result } from '../../values/result.js';
import { beyond } from '../nat/wan-standing.js';
import { needed, optional, orUnknown, parseChoice, type Read } from './read-given.js';
import type { TopicInput } from './topic.js';

const DONT_KNOW = { id: 'dont-know', title: 'nat.dont-know' } as const;
const YES_NO = [{ id: 'yes', title: 'nat.yes' }, { id: 'no', title: 'nat.no' }, DONT_KNOW] as const;
const OPEN_CLOSED = [
  { id: 'open', title: 'nat.open' },
  { id: 'closed', title: 'nat.closed' },
  DONT_KNOW,
] as const;

/** What the sum about being reached may be given. */
export const NAT_INPUTS: readonly TopicInput[] = [
  {
    id: 'way',
    ask: 'nat.ask-way',
    choices: [
      { id: 'service', title: 'nat.way-service' },
      { id: 'forward', title: 'nat.way-forward' },
    ],
  },
  { id: 'wan', ask: 'nat.ask-wan' },
  { id: 'outer', ask: 'nat.ask-outer', optional: true },
  { id: 'seen', ask: 'nat.ask-seen', optional: true },
  choice('outer-passes', 'nat.ask-outer-passes', YES_NO),
  { id: 'rule', ask: 'nat.ask-rule', optional: true },
  { id: 'camera', ask: 'nat.ask-camera', optional: true },
  choice('viewer', 'nat.ask-viewer', [
    { id: 'outside', title: 'nat.viewer-outside' },
    { id: 'inside', title: 'nat.viewer-inside' },
  ]),
  choice('turns-round', 'nat.ask-turns-round', YES_NO),
  choice('phone-network', 'nat.ask-phone-network', [
    { id: 'ipv4', title: 'nat.network-ipv4' },
    { id: 'ipv6-only', title: 'nat.network-ipv6-only' },
    DONT_KNOW,
  ]),
  choice('target', 'nat.ask-target', [
    { id: 'name', title: 'nat.target-name' },
    { id: 'numbers', title: 'nat.target-numbers' },
  ]),
  choice('phone-translates', 'nat.ask-phone-translates', YES_NO),
  choice('names', 'nat.ask-names', OPEN_CLOSED),
  choice('https', 'nat.ask-https', OPEN_CLOSED),
  choice('time', 'nat.ask-time', OPEN_CLOSED),
  choice('udp', 'nat.ask-udp', OPEN_CLOSED),
];

const address = orUnknown(parseAddress);
const answered: Read<'yes' | 'no' | 'dont-know'> = optional(
  parseChoice(['yes', 'no', 'dont-know']),
  'dont-know',
);
const state: Read<'open' | 'closed' | 'dont-know'> = optional(
  parseChoice(['open', 'closed', 'dont-know']),
  'dont-know',
);

/** How each of those inputs is read. */
export const NAT_READS = {
  way: needed(parseChoice(['service', 'forward'])),
  wan: needed(address),
  outer: optional(address, undefined),
  seen: optional(orUnknown(parseSeen), undefined),
  'outer-passes': answered,
  rule: optional(address, undefined),
  camera: optional(address, undefined),
  viewer: optional(parseChoice(['outside', 'inside']), 'outside'),
  'turns-round': answered,
  'phone-network': optional(parseChoice(['ipv4', 'ipv6-only', 'dont-know']), 'dont-know'),
  target: optional(parseChoice(['name', 'numbers']), 'name'),
  'phone-translates': answered,
  names: state,
  https: state,
  time: state,
  udp: state,
} as const;

function choice(
  id: string,
  ask: MessageId,
  choices: readonly { readonly id: string; readonly title: MessageId }[],
): TopicInput {
  return { id, ask, choices, optional: true };
}

/** The internet sees public addresses only; anything else was read at the wrong place. */
function parseSeen(text: string): Result<Address> {
  const seen = parseAddress(text);
  if (!seen.ok || beyond(seen.value) === 'internet') return seen;
  return problem({ id: 'nat.seen-not-public', with: { address: showAddress(seen.value) } });
}
