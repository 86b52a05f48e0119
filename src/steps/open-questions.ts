import { holds } from '../findings/holds.js';
import type { Condition } from '../rulebase/condition.js';
import type { FactId, Question, QuestionId, RuleBase, Who } from '../rulebase/records.js';
import { passKey, type Situation } from './situation.js';

const QUESTIONS = new WeakMap<RuleBase, ReadonlyMap<QuestionId, Question>>();

/** The question of this id; looked up some thousand times a step. */
export function questionOf(rules: RuleBase, id: QuestionId): Question | undefined {
  const known = QUESTIONS.get(rules) ?? new Map(rules.questions.map((one) => [one.id, one]));
  QUESTIONS.set(rules, known);
  return known.get(id);
}

const BEHIND = new WeakMap<RuleBase, Map<FactId, readonly QuestionId[]>>();

/** The questions that stand behind a fact of a condition: itself, a fact's inputs, what settles a finding. */
export function questionsBehind(rules: RuleBase, id: FactId): readonly QuestionId[] {
  const all = BEHIND.get(rules) ?? new Map<FactId, readonly QuestionId[]>();
  BEHIND.set(rules, all);
  const known = all.get(id);
  if (known) return known;
  const fact = rules.facts.find((one) => one.id === id);
  const behind = questionOf(rules, id)
    ? [id]
    : (fact?.inputs.flatMap((input) => questionsBehind(rules, input)) ??
      rules.findings.find((one) => one.id === id)?.asks ??
      []);
  all.set(id, behind);
  return behind;
}

/** Whether the person has the hands and the kit for this. */
export function canDo(
  situation: Pick<Situation, 'hands' | 'kit'>,
  job: { readonly who: Who; readonly needs?: readonly string[] },
): boolean {
  return situation.hands.has(job.who) && (job.needs ?? []).every((item) => situation.kit.has(item));
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
  const { rules, answers, passed } = situation;
  const answer = answers.get(id);
  if (answer) return answer.value.kind !== 'cant-tell';
  if (group.some((one) => one.id === id)) return true;
  const question = questionOf(rules, id);
  if (!question || above.includes(id) || passed.has(passKey('ask', id)) || !canDo(situation, question))
    return false;
  if (question.when && !gatherFor(situation, question.when, true, group, [...above, id])) return false;
  group.push(question);
  return true;
}

/**
 * The questions that would decide whether these conditions hold, in the order to ask them; none where they all
 * hold already. Where one of several parts is enough, the one that takes the fewest minutes. `undefined` where
 * they can't come true: one is false, or rests on something that was asked and nobody could tell.
 */
export function groupToDecide(
  situation: Situation,
  conditions: readonly Condition[],
): readonly Question[] | undefined {
  const group: Question[] = [];
  return conditions.every((one) => gatherFor(situation, one, true, group, [])) ? group : undefined;
}

/** Adds what would let a condition come out as wanted; false where nothing would (the group is then of no use). */
function gatherFor(
  situation: Situation,
  condition: Condition,
  wanted: boolean,
  group: Question[],
  above: readonly QuestionId[],
): boolean {
  const held = holds(condition, situation.settled.facts);
  if (held !== undefined) return held === wanted;
  if ('not' in condition) return gatherFor(situation, condition.not, !wanted, group, above);
  if ('fact' in condition) {
    const behind = questionsBehind(situation.rules, condition.fact);
    return (
      behind.some((id) => !situation.answers.has(id)) &&
      behind.every((id) => gather(situation, id, group, above))
    );
  }
  const parts = 'all' in condition ? condition.all : condition.any;
  if ('all' in condition === wanted)
    return parts.every((part) => gatherFor(situation, part, wanted, group, above));
  const cheapest = parts
    .map((part): { able: boolean; with: Question[] } => {
      const tried = [...group];
      return { able: gatherFor(situation, part, wanted, tried, above), with: tried };
    })
    .filter(({ able }) => able)
    .sort((a, b) => minutesOf(a.with) - minutesOf(b.with))[0];
  if (cheapest) group.splice(0, group.length, ...cheapest.with);
  return cheapest !== undefined;
}

function minutesOf(questions: readonly Question[]): number {
  return questions.reduce((sum, { minutes }) => sum + minutes, 0);
}
