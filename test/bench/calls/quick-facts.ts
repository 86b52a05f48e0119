import type { Answer, Answers } from '../../../src/answers/answer.js';
import { deriveFacts } from '../../../src/findings/derive-facts.js';
import type { Facts } from '../../../src/findings/fact.js';
import type { QuestionId, RuleBase } from '../../../src/rulebase/records.js';

interface Sums {
  /** The questions that any sum looks at. */
  readonly inputs: readonly QuestionId[];
  from: readonly (Answer | undefined)[];
  facts: Facts;
}

const LAST = new WeakMap<RuleBase, Sums>();

/** What `deriveFacts` gives; sums are worked out anew only where an answer that they look at is another one. */
export function quickFacts(rules: RuleBase, answers: Answers): Facts {
  const last = LAST.get(rules) ?? { inputs: inputsOf(rules), from: [], facts: new Map() };
  LAST.set(rules, last);
  const from = last.inputs.map((id) => answers.get(id));
  if (last.from.length === 0 || from.some((answer, at) => answer !== last.from[at])) {
    const told = new Map(from.flatMap((answer) => (answer ? [[answer.question, answer] as const] : [])));
    const derived = deriveFacts(rules.facts, told, rules.questions);
    last.facts = new Map([...derived].filter(([id]) => !told.has(id)));
    last.from = from;
  }
  return new Map([...deriveFacts([], answers), ...last.facts]);
}

function inputsOf({ facts, questions }: RuleBase): readonly QuestionId[] {
  const inputs = new Set(facts.flatMap((fact) => [...fact.inputs, ...Object.keys(fact.as ?? {})]));
  return questions.map(({ id }) => id).filter((id) => inputs.has(id));
}
