import type { MessageId, Sentence } from '../../messages/say.js';
import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';

export type PortState = 'open' | 'closed' | 'dont-know';

/** The ways out of the site that a camera and its service use, and the inputs that ask for them. */
export type WayOut = 'names' | 'https' | 'time' | 'udp';

interface Need {
  readonly way: WayOut;
  /** What is left when the way is closed. */
  readonly closed: 'impossible' | 'doubtful';
  readonly need: MessageId;
  readonly lost: MessageId;
  readonly ports: string;
}

/** Ports by the IANA Service Name and Transport Protocol Port Number Registry. */
export const OUTBOUND_NEEDS: readonly Need[] = [
  { way: 'names', closed: 'impossible', need: 'nat.need-names', lost: 'nat.lost-names', ports: '53' },
  { way: 'https', closed: 'impossible', need: 'nat.need-https', lost: 'nat.lost-https', ports: '443' },
  { way: 'time', closed: 'doubtful', need: 'nat.need-time', lost: 'nat.lost-time', ports: '123' },
  { way: 'udp', closed: 'doubtful', need: 'nat.need-udp', lost: 'nat.lost-udp', ports: '3478, 5349' },
];

/**
 * What must be open from the site outwards so that camera and phone meet at a service. Nothing need be
 * open inwards, and translators on the way do no harm: sessions out pass them (RFC 5128, section 3). The
 * mapping of a UDP session is kept two minutes at least, of an idle TCP session 2 h 4 min
 * (RFC 4787, REQ-5; RFC 5382, REQ-5).
 */
export function outboundNeeds(states: Readonly<Record<WayOut, PortState>>): Worked<Judged<WayOut>> {
  const impossible = OUTBOUND_NEEDS.find(
    ({ way, closed }) => states[way] === 'closed' && closed === 'impossible',
  );
  const unknown = OUTBOUND_NEEDS.find(({ way }) => states[way] === 'dont-know');
  const weakened = OUTBOUND_NEEDS.find(({ way }) => states[way] === 'closed');
  return { value: judged(), lines: [...OUTBOUND_NEEDS.flatMap(lines), { id: 'nat.keep-alive' }] };

  function judged(): Judged<WayOut> {
    if (impossible !== undefined) return { verdict: 'impossible' };
    if (unknown !== undefined) return { verdict: 'doubtful', decides: unknown.way };
    return { verdict: weakened === undefined ? 'fine' : 'doubtful' };
  }

  function lines({ way, need, lost, ports }: Need): readonly Sentence[] {
    const needed = { id: need, with: { ports } };
    return states[way] === 'closed' ? [needed, { id: lost }] : [needed];
  }
}
