import { openRemedies } from '../../../src/steps/open-remedies.js';
import { bottomUp } from './bottom-up.js';
import type { Policy } from './policy.js';
import { tryOrGate } from './tries.js';

/** What is tried first whatever the caller said; common practice, no source. */
const FIRST: readonly string[] = ['restart-camera', 'restart-router', 'reseat-lead'];

/** What people do: after the questions of the opening the restarts and the lead, and only then the list. */
export const whatPeopleDo: Policy = (situation, asked) => {
  if (FIRST.some((id) => !situation.tried.has(id))) {
    const open = openRemedies(situation);
    for (const id of FIRST) {
      const one = open.find(({ remedy }) => remedy.id === id);
      if (one) return tryOrGate(one);
    }
  }
  return bottomUp(situation, asked);
};
