import type { Origin, RawAnswer } from '../../src/answers/answer.js';
import { settle } from '../../src/findings/settle.js';
import { modelOf } from '../../src/ranking/model.js';
import { posterior } from '../../src/ranking/posterior.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import type { Situation } from '../../src/steps/situation.js';
import { answered } from '../findings/given.js';

/** Where a call stands after these answers: settled and ranked, the owner at the site with nothing at hand. */
export async function situationAfter(
  rules: RuleBase,
  raw: Readonly<Record<string, RawAnswer>> = {},
  over: Partial<Situation> = {},
  origin: Origin = 'said',
): Promise<Situation> {
  const answers = answered(rules, raw, origin);
  const settled = await settle(rules, answers);
  const model = modelOf(rules);
  const evidence = [...settled.findings.values()].map(({ finding, value, errorRate }) => ({
    finding,
    value,
    errorRate,
  }));
  return {
    rules,
    model,
    answers,
    settled,
    evidence,
    probabilities: posterior(model, evidence),
    here: 'site',
    hands: new Set(['anyone', 'owner']),
    kit: new Set(),
    passed: new Set(),
    tried: new Set(),
    askedBefore: new Set(Object.keys(raw)),
    revised: new Set(),
    left: new Set(),
    ...over,
  };
}
