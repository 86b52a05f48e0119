import type { Script } from '../../../src/call/scripted-call.js';
import { canDo } from '../../../src/steps/open-questions.js';
import { visitMinutes, wayMinutes } from '../../../src/steps/ways.js';
import type { Policy } from './policy.js';
import { least } from './tries.js';

/**
 * The bound: somebody who knows at once what is wrong and what would bring the picture back here, and needs no
 * gate opened. The cheapest such remedy, or a visit where that is cheaper. No policy can do better on a call.
 */
export function knowing({ remedies }: Script): Policy {
  return (situation) => {
    const { rules, here } = situation;
    const minutes = (remedy: (typeof rules.remedies)[number]): number =>
      remedy.minutes + wayMinutes(rules.manifest, here, remedy.place);
    const cures = rules.remedies.filter(
      (remedy) => remedies[remedy.id]?.picture === 'yes' && canDo(situation, remedy),
    );
    const best = least(cures, minutes);
    return best && minutes(best) < visitMinutes(rules.manifest)
      ? { kind: 'try', remedy: best.id }
      : { kind: 'visit' };
  };
}
