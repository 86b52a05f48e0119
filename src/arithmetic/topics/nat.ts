import { ok, type Result } from '../../values/result.js';
import { type Judged, worstOf } from '../judge.js';
import { forwardStanding, ruleTarget } from '../nat/forward-standing.js';
import { hairpin } from '../nat/hairpin.js';
import { outboundNeeds } from '../nat/outbound-needs.js';
import { phoneReach } from '../nat/phone-network.js';
import { type WanStanding, wanStanding } from '../nat/wan-standing.js';
import type { Worked } from '../worked.js';
import { NAT_INPUTS, NAT_READS } from './nat-inputs.js';
import { readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

/** Whether a camera can be reached from outside, through a service or through a forwarded port. */
export const NAT: Topic = { id: 'nat', title: 'nat.title', inputs: NAT_INPUTS, reckon };

type Read = Extract<ReturnType<typeof read>, { readonly ok: true }>['value'];

function read(given: Given) {
  return readGiven(given, NAT_READS);
}

function reckon(given: Given): Result<Reckoning> & { readonly input?: string } {
  const inputs = read(given);
  if (!inputs.ok) return inputs;
  const standing = wanStanding(inputs.value);
  const parts =
    inputs.value.way === 'forward'
      ? forwardParts(inputs.value, standing.value)
      : serviceParts(inputs.value, standing.value);
  const judged = worstOf(parts.map(({ value }) => value));
  return ok({
    ...judged,
    lines: [...standing.lines, ...parts.flatMap(({ lines }) => lines)],
    data: { way: inputs.value.way, standing: standing.value },
  });
}

function forwardParts(inputs: Read, standing: WanStanding): readonly Worked<Judged<string>>[] {
  const parts = [
    forwardStanding(standing, inputs['outer-passes']),
    ruleTarget(inputs.rule, inputs.camera),
    hairpin(inputs.viewer, inputs['turns-round']),
  ];
  // On the site's own network the phone's mobile network plays no part.
  if (inputs.viewer === 'inside') return parts;
  const site = inputs.seen ?? inputs.outer ?? inputs.wan;
  return [...parts, phoneReach(inputs['phone-network'], inputs.target, inputs['phone-translates'], site)];
}

function serviceParts(inputs: Read, standing: WanStanding): readonly Worked<Judged<string>>[] {
  const reaches: Worked<Judged<string>> =
    standing === 'no-address'
      ? { value: { verdict: 'impossible' }, lines: [] }
      : { value: { verdict: 'fine' }, lines: [{ id: 'nat.service-passes' }] };
  const needs = outboundNeeds(inputs);
  return [reaches, { value: needs.value, lines: [...needs.lines, { id: 'nat.own-ports' }] }];
}
