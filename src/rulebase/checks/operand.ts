import type { Operator } from '../condition.js';
import type { Known } from '../known.js';

/** What a condition can ask of a question, a fact or a finding. */
export type Operand =
  | { readonly type: 'choice' | 'several'; readonly values: readonly string[] }
  | { readonly type: 'number'; readonly min?: number; readonly max?: number }
  | { readonly type: 'yes-no' | 'text' | 'not-comparable' };

const EQUAL: readonly Operator[] = ['equal', 'notEqual'];
const ONE_OF: readonly Operator[] = [...EQUAL, 'in', 'notIn'];

/** The operators that make sense for each type of operand. */
export const FITTING: Readonly<Record<Operand['type'], readonly Operator[]>> = {
  choice: ONE_OF,
  text: ONE_OF,
  several: ['contains', 'doesNotContain'],
  'yes-no': EQUAL,
  number: [...EQUAL, 'lessThan', 'lessThanInclusive', 'greaterThan', 'greaterThanInclusive'],
  'not-comparable': [],
};

/** The operand of that id; `undefined` if there is none, or its file could not be read. */
export function operandOf(id: string, known: Known): Operand | undefined {
  const finding = known.findings.get(id);
  if (finding !== undefined) return { type: 'choice', values: Object.keys(finding.values) };
  const fact = known.facts.get(id);
  if (fact !== undefined)
    return fact.type === 'choice' ? { type: 'choice', values: fact.values ?? [] } : { type: fact.type };
  const answer = known.questions.get(id)?.answer;
  switch (answer?.type) {
    case undefined:
      return undefined;
    case 'choice':
    case 'several':
      return { type: answer.type, values: answer.choices.map((choice) => choice.id) };
    case 'number':
      return { type: 'number', min: answer.min, max: answer.max };
    case 'yes-no':
      return { type: 'yes-no' };
    default:
      return { type: 'not-comparable' };
  }
}
