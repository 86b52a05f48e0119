import type { Condition } from '../../rulebase/condition.js';
import { mentions } from '../../rulebase/mentions.js';
import type { Finding, FindingId, QuestionId, RuleBase } from '../../rulebase/records.js';

/** Two findings that one answer sets alike. */
export interface SameInformation {
  readonly question: QuestionId;
  readonly findings: readonly [FindingId, FindingId];
}

/**
 * Findings that rest on one and the same choice and part its answers alike, without one saying that it repeats the
 * other: their evidence would count twice.
 */
export function sameInformation(rules: RuleBase): readonly SameInformation[] {
  const pairs: SameInformation[] = [];
  for (const question of rules.questions) {
    if (question.answer.type !== 'choice') continue;
    const choices = question.answer.choices.map(({ id }) => id);
    const resting = rules.findings.filter((finding) => restsOnlyOn(finding, question.id));
    resting.forEach((a, i) => {
      for (const b of resting.slice(i + 1)) {
        const isDeclared = groupOf(a) === groupOf(b);
        if (!isDeclared && partsAlike(parting(a, choices), parting(b, choices)))
          pairs.push({ question: question.id, findings: [a.id, b.id] });
      }
    });
  }
  return pairs;
}

function groupOf({ id, repeats }: Finding): FindingId {
  return repeats?.finding ?? id;
}

function restsOnlyOn({ rules }: Finding, question: QuestionId): boolean {
  return rules.every(({ conditions }) => mentions(conditions).every((id) => id === question));
}

/** The value that each choice sets, by rank of priority; none where the choice says nothing. */
function parting({ rules }: Finding, choices: readonly string[]): readonly string[] {
  const ranked = [...rules].sort((a, b) => (b.priority ?? 1) - (a.priority ?? 1));
  return choices.map((choice) => ranked.find(({ conditions }) => fits(conditions, choice))?.value ?? '');
}

function partsAlike(a: readonly string[], b: readonly string[]): boolean {
  return a.every((one, i) => a.every((other, j) => (one === other) === (b[i] === b[j])));
}

function fits(condition: Condition, choice: string): boolean {
  if ('all' in condition) return condition.all.every((part) => fits(part, choice));
  if ('any' in condition) return condition.any.some((part) => fits(part, choice));
  if ('not' in condition) return !fits(condition.not, choice);
  const { operator, value } = condition;
  if (operator === 'equal') return value === choice;
  if (operator === 'notEqual') return value !== choice;
  return Array.isArray(value) && value.includes(choice) === (operator === 'in');
}
