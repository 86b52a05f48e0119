import { combinedErrorRate, leaningOf } from '../../../src/answers/reliability.js';
import type { Assessment } from '../../../src/call/assess.js';
import { type CallState, disputedOf } from '../../../src/call/state.js';
import { conflicts } from '../../../src/findings/contradictions.js';

import type { Fact, Facts } from '../../../src/findings/fact.js';
import { holds } from '../../../src/findings/holds.js';
import type { Known, Settled } from '../../../src/findings/settle.js';
import { isSilent } from '../../../src/findings/silent.js';
import type { Model } from '../../../src/ranking/model.js';
import { posterior } from '../../../src/ranking/posterior.js';

import type { FindingId, QuestionId, RuleBase } from '../../../src/rulebase/records.js';
import { type Prepared, preparedOf } from './prepared.js';
import { quickFacts } from './quick-facts.js';

/**
 * What `assess` of the call gives, at once and in half the time: conditions are tested with our own three-valued logic
 * instead of a rule engine. A test holds that both give the same.
 */
export function quickAssess(rules: RuleBase, model: Model, state: CallState): Assessment {
  const settled = settleQuickly(rules, state, disputedOf(state));
  const silent = new Set(
    rules.findings.filter((finding) => isSilent(rules, settled, finding)).map(({ id }) => id),
  );
  const evidence = [...settled.findings.values()]
    .filter(({ finding }) => !state.spent.has(finding) && !silent.has(finding))
    .map(({ finding, value, errorRate }) => ({ finding, value, errorRate }))
    .sort((a, b) => (a.finding < b.finding ? -1 : 1));
  const probabilities = posterior(model, evidence, state.factors);
  return { model, settled, evidence, probabilities, conflicts: conflicts(rules, settled) };
}

type Told = Pick<CallState, 'answers'>;

function settleQuickly(rules: RuleBase, state: Told, disputed: ReadonlySet<QuestionId>): Settled {
  const derived = quickFacts(rules, state.answers);
  const first = settleLayers(rules, state, disputed, derived, new Set());
  const faults = rules['tester-faults'].filter((fault) => holds(fault.when, first.facts) === true);
  const spoilt = new Set(faults.flatMap((fault) => fault.spoils));
  const sound = spoilt.size === 0 ? first : settleLayers(rules, state, disputed, derived, spoilt);
  return { ...sound, testerFaults: faults.map(({ id }) => id) };
}

function settleLayers(
  rules: RuleBase,
  { answers }: Told,
  disputed: ReadonlySet<QuestionId>,
  derived: Facts,
  spoilt: ReadonlySet<FindingId>,
): Pick<Settled, 'facts' | 'findings'> {
  const prepared = preparedOf(rules);
  const facts = new Map<string, Fact>(derived);
  const findings = new Map<FindingId, Known>();
  for (const { id, ready } of prepared.layers) {
    const winner = spoilt.has(id) ? undefined : ready.find((rule) => fires(rule, facts));
    if (!winner) continue;
    const basis = [...new Set(winner.mentioned.flatMap((fact) => facts.get(fact)?.basis ?? []))].sort();
    const leanings = basis.flatMap((question) => {
      const [record, answer] = [prepared.questions.get(question), answers.get(question)];
      return record && answer
        ? [leaningOf(rules.manifest.reliability, record, answer, disputed.has(question))]
        : [];
    });
    const { value } = winner.rule;
    findings.set(id, { finding: id, value, basis, errorRate: combinedErrorRate(leanings) });
    facts.set(id, { value, lines: [], basis });
  }
  return { facts, findings };
}

/** A rule runs only when every fact it mentions is known. */
function fires({ rule, mentioned }: Prepared['layers'][number]['ready'][number], facts: Facts): boolean {
  return mentioned.every((id) => facts.has(id)) && holds(rule.conditions, facts) === true;
}
