import type { Answers } from '../answers/answer.js';
import { combinedErrorRate, leaningOf } from '../answers/reliability.js';
import { layersOf } from '../rulebase/layers.js';
import { mentions } from '../rulebase/mentions.js';
import type { Finding, FindingId, QuestionId, RuleBase, ValueId } from '../rulebase/records.js';
import { deriveFacts } from './derive-facts.js';
import type { Fact, Facts } from './fact.js';
import { holds } from './holds.js';
import { type NamedRule, runEngine } from './run-engine.js';

/** A finding whose value is known. */
export interface Known {
  readonly finding: FindingId;
  readonly value: ValueId;
  /** The answers it rests on, sorted. */
  readonly basis: readonly QuestionId[];
  /** Chance that one of those answers is wrong, 0 to 1. */
  readonly errorRate: number;
}

export interface Settled {
  readonly facts: Facts;
  readonly findings: ReadonlyMap<FindingId, Known>;
  /** Tester faults that hold, and the findings they spoil (already left out above). */
  readonly testerFaults: readonly string[];
}

/**
 * Answers to facts to findings. Findings that build on findings settle layer by layer.
 * Of several rules that fire for one finding the highest priority wins, then the first by its place in the record.
 * A check that a tester fault spoils says nothing, and neither does what builds on it.
 */
export async function settle(
  rules: RuleBase,
  answers: Answers,
  disputed: ReadonlySet<QuestionId> = new Set(),
): Promise<Settled> {
  const first = await settleLayers(rules, answers, disputed, new Set());
  const faults = rules['tester-faults'].filter((fault) => holds(fault.when, first.facts) === true);
  const spoilt = new Set(faults.flatMap((fault) => fault.spoils));
  // What builds on a spoilt check must not keep its word either, so everything is settled anew without it.
  const sound = spoilt.size === 0 ? first : await settleLayers(rules, answers, disputed, spoilt);
  return { ...sound, testerFaults: faults.map((fault) => fault.id) };
}

async function settleLayers(
  rules: RuleBase,
  answers: Answers,
  disputed: ReadonlySet<QuestionId>,
  spoilt: ReadonlySet<FindingId>,
): Promise<Pick<Settled, 'facts' | 'findings'>> {
  const facts = new Map<string, Fact>(deriveFacts(rules.facts, answers, rules.questions));
  const findings = new Map<FindingId, Known>();
  const byId = new Map(
    rules.findings.filter(({ id }) => !spoilt.has(id)).map((finding) => [finding.id, finding]),
  );
  for (const layer of layersOf(rules.findings)) {
    const members = layer.flatMap((id) => byId.get(id) ?? []);
    const fired = await runEngine(members.flatMap(namedRules), facts);
    for (const finding of members) {
      const winner = strongest(fired.filter((rule) => rule.finding === finding.id));
      if (!winner) continue;
      const basis = basisOf(winner, facts);
      findings.set(finding.id, {
        finding: finding.id,
        value: winner.rule.value,
        basis,
        errorRate: basisErrorRate(rules, answers, basis, disputed),
      });
      facts.set(finding.id, { value: winner.rule.value, lines: [], basis });
    }
  }
  return { facts, findings };
}

const NAMED = new WeakMap<Finding, readonly NamedRule[]>();

function namedRules(finding: Finding): readonly NamedRule[] {
  const known = NAMED.get(finding) ?? nameRules(finding);
  NAMED.set(finding, known);
  return known;
}

function nameRules(finding: Finding): readonly NamedRule[] {
  return finding.rules.map((rule, index) => ({
    name: `${finding.id} ${String(index).padStart(3, '0')}`,
    finding: finding.id,
    rule,
  }));
}

function strongest(fired: readonly NamedRule[]): NamedRule | undefined {
  return [...fired].sort((a, b) => (b.rule.priority ?? 1) - (a.rule.priority ?? 1))[0];
}

function basisOf(winner: NamedRule, facts: Facts): readonly QuestionId[] {
  const basis = new Set<QuestionId>();
  for (const id of mentions(winner.rule.conditions))
    for (const question of facts.get(id)?.basis ?? []) basis.add(question);
  return [...basis].sort();
}

function basisErrorRate(
  rules: RuleBase,
  answers: Answers,
  basis: readonly QuestionId[],
  disputed: ReadonlySet<QuestionId>,
): number {
  const leanings = basis.flatMap((id) => {
    const question = rules.questions.find((one) => one.id === id);
    const answer = answers.get(id);
    return question && answer
      ? [leaningOf(rules.manifest.reliability, question, answer, disputed.has(id))]
      : [];
  });
  return combinedErrorRate(leanings);
}
