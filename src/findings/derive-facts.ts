import type { Answers, AnswerValue } from '../answers/answer.js';
import type { FactId, FactRecord, Question } from '../rulebase/records.js';
import { type Fact, type Facts, plainValue } from './fact.js';
import { workSum } from './sums.js';
import { topicFact } from './topic-fact.js';

/**
 * What is known from the answers alone: each answered question, and each sum whose inputs are all known.
 * *Can't tell* makes nothing known. Facts may build on facts; the rule base holds no circles (checked at load).
 */
export function deriveFacts(
  records: readonly FactRecord[],
  answers: Answers,
  questions: readonly Question[] = [],
): Facts {
  const byId = new Map(questions.map((question) => [question.id, question]));
  const facts = new Map<FactId, Fact>();
  for (const [id, answer] of answers) {
    const value = plainValue(answer.value);
    if (value !== undefined) facts.set(id, { value, lines: [], basis: [id] });
  }
  let waiting = records;
  for (let before = -1; before !== waiting.length; ) {
    before = waiting.length;
    waiting = waiting.filter((record) => {
      const fact = record.as ? topicFact(record, answers, byId) : work(record, facts, answers);
      if (fact) facts.set(record.id, fact);
      return !fact;
    });
  }
  return facts;
}

function work(record: FactRecord, facts: Facts, answers: Answers): Fact | undefined {
  const inputs: AnswerValue[] = [];
  const basis = new Set<string>();
  for (const id of record.inputs) {
    const known = facts.get(id);
    if (!known) return undefined;
    for (const question of known.basis) basis.add(question);
    const input = answers.get(id)?.value ?? asInput(known.value);
    if (!input) return undefined;
    inputs.push(input);
  }
  const worked = workSum(record.sum, inputs);
  return worked && { value: worked.value, lines: worked.lines, basis: [...basis].sort() };
}

function asInput(value: Fact['value']): AnswerValue | undefined {
  if (typeof value === 'string') return { kind: 'choice', id: value };
  if (typeof value === 'number') return { kind: 'number', number: value };
  if (typeof value === 'boolean') return { kind: 'yes-no', yes: value };
  return { kind: 'several', ids: value };
}
