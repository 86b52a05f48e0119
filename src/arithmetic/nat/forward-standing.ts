import type { MessageId } from '../../messages/say.js';
import { type Address, showAddress } from '../../values/address.js';
import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';
import type { WanStanding } from './wan-standing.js';

export type Answered = 'yes' | 'no' | 'dont-know';

/** The inputs that may decide whether a port forward works. */
export type ForwardInput = 'wan' | 'outer' | 'seen' | 'outer-passes' | 'rule' | 'camera';

type Way = Judged<ForwardInput> & { readonly id: MessageId };

const OUTER: Readonly<Record<Answered, Way>> = {
  yes: { verdict: 'fine', id: 'nat.forward-both' },
  no: { verdict: 'impossible', id: 'nat.forward-outer-closed' },
  'dont-know': { verdict: 'doubtful', decides: 'outer-passes', id: 'nat.forward-needs-both' },
};

/**
 * Whether a port forward on the camera's router can be reached from outside at all. Behind a second
 * router both need one, or the outer one only bridges (RFC 5128, section 3.3, from memory); a provider's
 * translator forwards nothing unless the provider lets its customers ask for it (RFC 6888, REQ-9).
 */
export function forwardStanding(standing: WanStanding, outerPasses: Answered): Worked<Judged<ForwardInput>> {
  const { id, ...value } = wayOf(standing, outerPasses);
  return { value, lines: [{ id }] };
}

function wayOf(standing: WanStanding, outerPasses: Answered): Way {
  switch (standing) {
    case 'direct':
      return { verdict: 'fine', id: 'nat.forward-can' };
    case 'direct-unseen':
      return { verdict: 'doubtful', decides: 'seen', id: 'nat.forward-compare' };
    case 'translated':
      return { verdict: 'doubtful', decides: 'seen', id: 'nat.forward-look-again' };
    case 'carrier':
    case 'both':
      return { verdict: 'impossible', id: 'nat.forward-carrier' };
    case 'double':
      return OUTER[outerPasses];
    case 'another-router':
      return outerPasses === 'no'
        ? OUTER.no
        : { verdict: 'doubtful', decides: 'outer', id: 'nat.forward-look-beyond' };
    case 'no-address':
      return { verdict: 'impossible', id: 'nat.forward-no-address' };
    case 'unknown':
      return { verdict: 'doubtful', decides: 'wan', id: 'nat.forward-wan-needed' };
  }
}

/** Whether the rule sends the port to the address the camera has now. */
export function ruleTarget(rule?: Address, camera?: Address): Worked<Judged<ForwardInput>> {
  if (rule === undefined || camera === undefined) {
    const decides = rule === undefined ? 'rule' : 'camera';
    return { value: { verdict: 'doubtful', decides }, lines: [{ id: 'nat.rule-not-compared' }] };
  }
  const said = { rule: showAddress(rule), camera: showAddress(camera) };
  return rule.bits === camera.bits
    ? { value: { verdict: 'fine' }, lines: [{ id: 'nat.rule-fits', with: said }] }
    : { value: { verdict: 'impossible' }, lines: [{ id: 'nat.rule-elsewhere', with: said }] };
}
