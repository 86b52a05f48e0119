import type { Judged } from '../judge.js';
import type { Worked } from '../worked.js';
import type { Answered } from './forward-standing.js';

/**
 * Whether somebody on the site's own network can use the outside address of a forward. A router must
 * turn such traffic round (RFC 4787, REQ-9); that many do not is common practice, no source.
 */
export function hairpin(viewer: 'inside' | 'outside', turnsRound: Answered): Worked<Judged<'turns-round'>> {
  if (viewer === 'outside') return { value: { verdict: 'fine' }, lines: [] };
  switch (turnsRound) {
    case 'yes':
      return { value: { verdict: 'fine' }, lines: [{ id: 'nat.hairpin-works' }] };
    case 'no':
      return { value: { verdict: 'impossible' }, lines: [{ id: 'nat.hairpin-missing' }] };
    case 'dont-know':
      return {
        value: { verdict: 'doubtful', decides: 'turns-round' },
        lines: [{ id: 'nat.hairpin-unknown' }],
      };
  }
}
