import type { RawAnswer } from '../../answers/answer.js';
import type { Condition } from '../../rulebase/condition.js';
import type { Question, QuestionId, RuleBase } from '../../rulebase/records.js';

/** Addresses of an invented site, of another range, of the outside, and none: enough to settle every sum both ways. */
const ADDRESSES: readonly RawAnswer[] = [
  '172.23.40.57',
  '172.23.40.1',
  '172.23.40.112',
  '172.23.40.0',
  '10.77.5.20',
  '10.77.5.1',
  '169.254.7.9',
  '100.64.5.5',
  '203.0.113.53',
  '0.0.0.0',
];
const MASKS: readonly RawAnswer[] = ['255.255.255.0', '255.255.255.128', '255.255.0.0'];
const MOMENTS: readonly RawAnswer[] = [
  '25 Nov 2026 14:30',
  '25 Nov 2026 13:30',
  '1 Jan 2000 03:12',
  '3 Aug 2026 09:07',
];

/** Answers that a caller might give to a question, so many that every condition on it can be met. */
export function tellable(rules: RuleBase, question: Question): readonly RawAnswer[] {
  const shape = question.answer;
  switch (shape.type) {
    case 'choice':
      return shape.choices.map(({ id }) => id);
    case 'several':
      return [[], ...shape.choices.map(({ id }) => [id])];
    case 'yes-no':
      return [true, false];
    case 'address':
      return ADDRESSES;
    case 'mask':
      return MASKS;
    case 'moment':
      return MOMENTS;
    case 'text':
      return ['as told'];
    case 'number':
      return numbers(limitsIn(rules, question.id), shape.min, shape.max);
  }
}

/** The ends, the limits that conditions name and both their sides, and some between for sums. */
function numbers(limits: readonly number[], min: number, max: number): readonly number[] {
  const low = Math.max(min, 0.1);
  const between = [0.15, 0.5, 0.85].map((part) => low * (max / low) ** part);
  const all = [min, max, ...between.map((one) => Number(one.toPrecision(2)))];
  const near = limits.flatMap((limit) => [limit, limit - 1, limit + 1]);
  return [...new Set([...all, ...near])].filter((one) => one >= min && one <= max).sort((a, b) => a - b);
}

function limitsIn(rules: RuleBase, id: QuestionId): readonly number[] {
  const conditions = [
    ...rules.findings.flatMap((finding) => finding.rules.map((rule) => rule.conditions)),
    ...[...rules.remedies, ...rules.questions].flatMap(({ when }) => (when ? [when] : [])),
  ];
  return conditions.flatMap((condition) => limitsOf(condition, id));
}

function limitsOf(condition: Condition, id: QuestionId): readonly number[] {
  if ('all' in condition) return condition.all.flatMap((part) => limitsOf(part, id));
  if ('any' in condition) return condition.any.flatMap((part) => limitsOf(part, id));
  if ('not' in condition) return limitsOf(condition.not, id);
  return condition.fact === id && typeof condition.value === 'number' ? [condition.value] : [];
}
