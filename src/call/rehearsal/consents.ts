import type { Condition } from '../../rulebase/condition.js';
import type { QuestionId, RuleBase } from '../../rulebase/records.js';

const KNOWN = new WeakMap<RuleBase, ReadonlyMap<QuestionId, boolean>>();

/** Yes-or-no questions that bear on no finding and only open a gate, each with the answer that opens it. */
export function consentsOf(rules: RuleBase): ReadonlyMap<QuestionId, boolean> {
  const known = KNOWN.get(rules);
  if (known) return known;
  const telling = new Set(rules.findings.flatMap(({ asks }) => asks));
  const opening = new Map(rules.remedies.flatMap(({ gate }) => (gate ? agreed(gate.condition) : [])));
  const consents = rules.questions.flatMap(({ id, answer }): [QuestionId, boolean][] => {
    const wanted = opening.get(id);
    return answer.type !== 'yes-no' || telling.has(id) || wanted === undefined ? [] : [[id, wanted]];
  });
  const all = new Map(consents);
  KNOWN.set(rules, all);
  return all;
}

function agreed(condition: Condition): readonly (readonly [string, boolean])[] {
  if ('all' in condition) return condition.all.flatMap(agreed);
  if ('any' in condition) return condition.any.flatMap(agreed);
  if ('not' in condition) return [];
  const { fact, operator, value } = condition;
  return operator === 'equal' && typeof value === 'boolean' ? [[fact, value]] : [];
}
