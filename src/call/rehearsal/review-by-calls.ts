import { type RuleFault, warning } from '../../rulebase/fault.js';
import { fileOf } from '../../rulebase/layout.js';
import type { RuleBase } from '../../rulebase/records.js';
import { rehearse } from './rehearse.js';

/** Share of wrong answers, and of those that nobody can tell, as the design takes callers to be. */
const WRONG = 0.05;
const CANT_TELL = 0.15;

/**
 * Questions that were worth asking in none of so many rehearsed calls, and remedies that were tried in none.
 * Half of the calls are with callers who know everything, half with such as get it wrong.
 */
export async function reviewByCalls(
  rules: RuleBase,
  digest: string,
  calls: number,
): Promise<readonly RuleFault[]> {
  const asked = new Set<string>();
  const tried = new Set<string>();
  for (let seed = 1; seed <= calls; seed++) {
    const callers = seed % 2 === 0 ? { wrong: WRONG, cantTell: CANT_TELL } : {};
    const call = await rehearse(rules, digest, seed, callers);
    for (const id of call.asked) asked.add(id);
    for (const id of call.tried) tried.add(id);
  }
  return [
    ...rules.questions
      .filter(({ id }) => !asked.has(id))
      .map(({ id, stage }) =>
        warning(fileOf('questions', id, stage), '', { id: 'review.never-asked', with: { calls } }),
      ),
    ...rules.remedies
      .filter(({ id }) => !tried.has(id))
      .map(({ id, stage }) =>
        warning(fileOf('remedies', id, stage), '', { id: 'review.never-tried', with: { calls } }),
      ),
  ];
}
