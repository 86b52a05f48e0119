import { checkCauses } from './checks/causes.js';
import { checkConditions } from './checks/conditions.js';
import { checkDefaults } from './checks/defaults.js';
import { checkFacts } from './checks/facts.js';
import { checkFindings } from './checks/findings.js';
import { checkIds } from './checks/ids.js';
import { checkManifest } from './checks/manifest.js';
import { checkMentions } from './checks/mentioned.js';
import { checkQuestions } from './checks/questions.js';
import { checkSigns } from './checks/signs.js';
import type { Draft } from './draft.js';
import type { RuleFault } from './fault.js';
import { type CodeNames, knownIn } from './known.js';

/** Everything a schema cannot see, over the whole rule base at once: every fault, not only the first. */
export function checkMeaning(draft: Draft, code: CodeNames): readonly RuleFault[] {
  const known = knownIn(draft, code);
  return [
    ...checkIds(draft),
    ...checkManifest(draft, known),
    ...checkMentions(draft, known),
    ...checkConditions(draft, known),
    ...checkSigns(draft, known),
    ...checkDefaults(draft, known),
    ...checkFindings(draft, known),
    ...checkFacts(draft, known),
    ...checkQuestions(draft, known),
    ...checkCauses(draft, known),
  ];
}
