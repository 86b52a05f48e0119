import type { Sentence } from '../../messages/say.js';
import { parseAddress, showAddress } from '../../values/address.js';
import { parseMask } from '../../values/mask.js';
import { ok } from '../../values/result.js';
import { bothWays } from '../walk/both-ways.js';
import { walkData } from '../walk/data.js';
import { walk } from '../walk/walk.js';
import { type Joined, SOMEWHERE, siteOf } from './reach-site.js';
import { needed, optional, orUnknown, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

const YES_NO = [
  { id: 'yes', title: 'reckon.yes' },
  { id: 'no', title: 'reckon.no' },
] as const;

/** Whether camera, computer and internet reach each other, walked there and back. */
export const REACH: Topic = {
  id: 'reach',
  title: 'reckon.reach',
  inputs: [
    { id: 'camera-address', ask: 'reckon.ask-camera-address' },
    { id: 'camera-mask', ask: 'reckon.ask-camera-mask' },
    { id: 'camera-gateway', ask: 'reckon.ask-camera-gateway' },
    { id: 'computer-address', ask: 'reckon.ask-computer-address' },
    { id: 'computer-mask', ask: 'reckon.ask-computer-mask' },
    { id: 'computer-gateway', ask: 'reckon.ask-computer-gateway' },
    { id: 'router-address', ask: 'reckon.ask-router-address' },
    { id: 'router-mask', ask: 'reckon.ask-router-mask' },
    {
      id: 'same-segment',
      ask: 'reckon.ask-same-segment',
      optional: true,
      choices: [
        { id: 'same', title: 'reckon.same' },
        { id: 'routed', title: 'reckon.routed' },
        { id: 'guest', title: 'reckon.guest' },
      ],
    },
    { id: 'isolation', ask: 'reckon.ask-isolation', optional: true, choices: YES_NO },
    { id: 'stateful-router', ask: 'reckon.ask-stateful', optional: true, choices: YES_NO },
  ],
  reckon,
};

const yesOrNo = optional(orUnknown(parseChoice(['yes', 'no'] as const)), undefined);
const READS = {
  'camera-address': needed(parseAddress),
  'camera-mask': needed(parseMask),
  'camera-gateway': needed(parseAddress),
  'computer-address': needed(parseAddress),
  'computer-mask': needed(parseMask),
  'computer-gateway': needed(parseAddress),
  'router-address': needed(parseAddress),
  'router-mask': needed(parseMask),
  'same-segment': optional(orUnknown(parseChoice(['same', 'routed', 'guest'] as const)), undefined),
  isolation: yesOrNo,
  'stateful-router': yesOrNo,
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { value } = read;
  const joined: Omit<Joined, 'isStateful'> = {
    camera: {
      address: value['camera-address'],
      mask: value['camera-mask'],
      gateway: value['camera-gateway'],
    },
    computer: {
      address: value['computer-address'],
      mask: value['computer-mask'],
      gateway: value['computer-gateway'],
    },
    router: { address: value['router-address'], mask: value['router-mask'] },
    segments: value['same-segment'] ?? 'same',
    isIsolated: value.isolation === 'yes',
  };
  const assumed: readonly Sentence[] = [
    ...(value['same-segment'] === undefined ? [{ id: 'reckon.assumed-same' } as const] : []),
    ...(value.isolation === undefined ? [{ id: 'reckon.assumed-open' } as const] : []),
    { id: 'reckon.example-internet', with: { address: showAddress(SOMEWHERE) } },
  ];
  return ok(judged(joined, value['stateful-router'], assumed));
}

/** Where it is not known whether the router drops answers it did not see asked for, both are walked. */
function judged(
  joined: Omit<Joined, 'isStateful'>,
  stateful: 'yes' | 'no' | undefined,
  assumed: readonly Sentence[],
): Reckoning {
  const strict = walks({ ...joined, isStateful: stateful !== 'no' });
  const lines = [...assumed, ...strict.lines];
  if (stateful === undefined) {
    const loose = walks({ ...joined, isStateful: false });
    if (loose.reached !== strict.reached) {
      return {
        verdict: 'doubtful',
        decides: 'stateful-router',
        lines: [...lines, { id: 'reckon.depends-on-router' }],
        data: { ifStateful: strict.data, ifNot: loose.data },
      };
    }
  }
  return { verdict: strict.isAll ? 'fine' : 'impossible', lines, data: strict.data };
}

function walks(joined: Joined) {
  const site = siteOf(joined);
  const local = bothWays(site, 'computer', 'camera');
  const out = walk(site, 'camera', 'internet');
  const all = [local.first, local.second, out];
  const reached = all.map(({ outcome }) => outcome === 'reaches');
  return {
    isAll: reached.every((one) => one),
    reached: reached.join(),
    lines: [...local.lines, ...out.lines],
    data: { ways: local.ways, oneWay: local.oneWay, walks: all.map(walkData) },
  };
}
