import type { Sentence } from '../messages/say.js';
import type { Finding, QuestionId, RuleBase } from '../rulebase/records.js';
import { holds } from './holds.js';
import type { Known, Settled } from './settle.js';

/** Two or more answers that cannot all be right. */
export interface Conflict {
  /**
   * The contradiction's id, or `repeats:<finding>` where a finding disagrees with the one it repeats, or
   * `repeats:<finding>:<finding>` where two findings cannot both agree with the one they repeat.
   */
  readonly id: string;
  readonly between: readonly QuestionId[];
  /** The answer to look at first. */
  readonly check: QuestionId;
  /** The rule base's own sentence, or ours. */
  readonly says: string | Sentence;
}

/** The conflicts among what is known now: those the rule base names first, then repeats that disagree. */
export function conflicts(rules: RuleBase, settled: Settled): readonly Conflict[] {
  const named = rules.contradictions
    .filter((one) => holds(one.when, settled.facts) === true)
    .map(({ id, between, check, says }): Conflict => ({ id, between, check, says }));
  return [...named, ...rules.findings.flatMap((finding) => disagreements(rules, finding, settled))];
}

/** With the finding it repeats or, while that is not known, with later ones that repeat the same. */
function disagreements(rules: RuleBase, finding: Finding, settled: Settled): Conflict[] {
  const here = settled.findings.get(finding.id);
  const agreed = here && finding.repeats?.agrees[here.value];
  if (!finding.repeats || !here || !agreed) return [];
  const shared = rules.findings.find(({ id }) => id === finding.repeats?.finding);
  const original = shared && settled.findings.get(shared.id);
  if (shared && original) {
    const says = disagree(finding, here, shared, original);
    return agreed.includes(original.value) ? [] : conflictOf(`repeats:${finding.id}`, here, original, says);
  }
  const later = rules.findings.slice(rules.findings.indexOf(finding) + 1);
  return later.flatMap((other) => {
    const there = settled.findings.get(other.id);
    const alike = there && other.repeats?.agrees[there.value];
    if (!there || !alike || other.repeats?.finding !== finding.repeats?.finding) return [];
    if (alike.some((value) => agreed.includes(value))) return [];
    const says = disagree(finding, here, other, there);
    return conflictOf(`repeats:${finding.id}:${other.id}`, here, there, says);
  });
}

/** None where both findings rest on one and the same answer. */
function conflictOf(id: string, here: Known, there: Known, says: Sentence): Conflict[] {
  const between = [...new Set([...here.basis, ...there.basis])];
  const check = here.basis[0];
  return check === undefined || between.length < 2 ? [] : [{ id, between, check, says }];
}

function disagree(finding: Finding, here: Known, other: Finding, there: Known): Sentence {
  const filling = {
    here: finding.title,
    value: finding.values[here.value]?.title ?? here.value,
    there: other.title,
    otherValue: other.values[there.value]?.title ?? there.value,
  };
  return { id: 'conflict.repeats', with: filling };
}
