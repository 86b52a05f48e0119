import { type Answers, isConfirmed } from '../answers/answer.js';
import type { Sentence } from '../messages/say.js';
import { mentions } from '../rulebase/mentions.js';
import type { CauseId, Finding, FindingId, QuestionId, RuleBase, ValueId } from '../rulebase/records.js';
import type { Fact } from './fact.js';
import { holds } from './holds.js';
import type { Settled } from './settle.js';

/** A fault that arithmetic shows by itself, whatever the ranking says. */
export interface Defect {
  readonly finding: FindingId;
  readonly value: ValueId;
  /** The rule base's sentence, placeholders not yet filled. */
  readonly says: string;
  readonly cause?: CauseId;
  /** Proven where every answer it rests on is confirmed; else it follows from the numbers given. */
  readonly grade: 'proven' | 'follows';
  readonly unconfirmed: readonly QuestionId[];
  /** The sum, written out. */
  readonly lines: readonly Sentence[];
}

/** The defects among what is known now, in the order of the findings. */
export function defectsOf(rules: RuleBase, answers: Answers, settled: Settled): readonly Defect[] {
  return rules.findings.flatMap((finding) => {
    const known = settled.findings.get(finding.id);
    const defect = known && finding.values[known.value]?.defect;
    if (!known || !defect) return [];
    const facts = factsBehind(finding, known.value, settled);
    const guessed = facts.some(({ estimate }) => estimate);
    const unconfirmed = known.basis.filter((id) => {
      const answer = answers.get(id);
      return !answer || !isConfirmed(answer);
    });
    return [
      {
        finding: finding.id,
        value: known.value,
        ...defect,
        grade: unconfirmed.length === 0 && !guessed ? ('proven' as const) : ('follows' as const),
        // Reading a guess back makes no measurement of it.
        unconfirmed: guessed ? [] : unconfirmed,
        lines: facts.flatMap(({ lines }) => lines),
      },
    ];
  });
}

/** The facts of the rules that hold; another rule for the same value may test a fact that shows no fault. */
function factsBehind(finding: Finding, value: ValueId, settled: Settled): readonly Fact[] {
  const facts = new Set(
    finding.rules
      .filter((rule) => rule.value === value && holds(rule.conditions, settled.facts) === true)
      .flatMap((rule) => mentions(rule.conditions)),
  );
  return [...facts].flatMap((id) => settled.facts.get(id) ?? []);
}
