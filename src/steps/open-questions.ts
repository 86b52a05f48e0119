import { holds } from '../findings/holds.js';
import type { Condition } from '../rulebase/condition.js';
import { mentions } from '../rulebase/mentions.js';
import type { FactId, Question, QuestionId, RuleBase, Who } from '../rulebase/records.js';
import { passKey, type Situation } from './situation.js';

/** The questions that stand behind a fact of a condition: itself, a fact's inputs, what settles a finding. */
export function questionsBehind(rules: RuleBase, id: FactId): readonly QuestionId[] {
  if (rules.questions.some((question) => question.id === id)) return [id];
  const fact = rules.facts.find((one) => one.id === id);
  if (fact) return fact.inputs.flatMap((input) => questionsBehind(rules, input));
  return rules.findings.find((one) => one.id === id)?.asks ?? [];
}

/** Whether the person has the hands and the kit for this. */
export function canDo(
  situation: Pick<Situation, 'hands' | 'kit'>,
  job: { readonly who: Who; readonly needs?: readonly string[] },
): boolean {
  return situation.hands.has(job.who) && (job.needs ?? []).every((item) => situation.kit.has(item));
}

/**
 * Whether a condition that is not known yet can still come true: every fact it needs is right, or has a question
 * behind it that nobody has asked. What was asked and answered *can't tell* stays unknown.
 */
export function couldHold(
  situation: Pick<Situation, 'rules' | 'settled' | 'answers'>,
  condition: Condition,
  wanted = true,
): boolean {
  const could = (want: boolean) => (part: Condition) => couldHold(situation, part, want);
  if ('all' in condition) return wanted ? condition.all.every(could(true)) : condition.all.some(could(false));
  if ('any' in condition) return wanted ? condition.any.some(could(true)) : condition.any.every(could(false));
  if ('not' in condition) return couldHold(situation, condition.not, !wanted);
  const held = holds(condition, situation.settled.facts);
  if (held !== undefined) return held === wanted;
  return questionsBehind(situation.rules, condition.fact).some((id) => !situation.answers.has(id));
}

/**
 * The unanswered ones of these questions, in the order to ask them, with the questions first that decide whether
 * they make sense. `undefined` where one of them makes no sense, was answered *can't tell*, or can't be done here.
 */
export function groupFor(
  situation: Situation,
  wanted: readonly QuestionId[],
): readonly Question[] | undefined {
  const group: Question[] = [];
  for (const id of wanted) if (!gather(situation, id, group, [])) return undefined;
  return group;
}

function gather(
  situation: Situation,
  id: QuestionId,
  group: Question[],
  above: readonly QuestionId[],
): boolean {
  const { rules, answers, settled, passed } = situation;
  const answer = answers.get(id);
  if (answer) return answer.value.kind !== 'cant-tell';
  if (group.some((one) => one.id === id)) return true;
  const question = rules.questions.find((one) => one.id === id);
  if (!question || above.includes(id) || passed.has(passKey('ask', id)) || !canDo(situation, question))
    return false;
  const sensible = question.when ? holds(question.when, settled.facts) : true;
  if (sensible === false) return false;
  if (sensible === undefined && question.when) {
    if (!couldHold(situation, question.when)) return false;
    const first = mentions(question.when)
      .filter((fact) => !settled.facts.has(fact))
      .flatMap((fact) => questionsBehind(rules, fact))
      .filter((one) => !answers.has(one));
    if (first.length === 0 || !first.every((one) => gather(situation, one, group, [...above, id])))
      return false;
  }
  group.push(question);
  return true;
}
