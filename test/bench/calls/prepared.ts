import { layersOf } from '../../../src/rulebase/layers.js';
import { mentions } from '../../../src/rulebase/mentions.js';
import type {
  FactId,
  FindingId,
  FindingRule,
  Question,
  QuestionId,
  RuleBase,
} from '../../../src/rulebase/records.js';

/** What is worked out once for a rule base, so that thousands of calls need not. */
export interface Prepared {
  readonly questions: ReadonlyMap<QuestionId, Question>;
  /** Findings in an order in which they can be settled, each with its rules, the strongest first. */
  readonly layers: readonly {
    readonly id: FindingId;
    readonly ready: readonly { readonly rule: FindingRule; readonly mentioned: readonly FactId[] }[];
  }[];
}

const KNOWN = new WeakMap<RuleBase, Prepared>();

/** The preparation of a rule base. */
export function preparedOf(rules: RuleBase): Prepared {
  const known = KNOWN.get(rules);
  if (known) return known;
  const byId = new Map(rules.findings.map((finding) => [finding.id, finding]));
  const layers = layersOf(rules.findings)
    .flat()
    .map((id) => {
      const sorted = [...(byId.get(id)?.rules ?? [])].sort((a, b) => (b.priority ?? 1) - (a.priority ?? 1));
      return { id, ready: sorted.map((rule) => ({ rule, mentioned: mentions(rule.conditions) })) };
    });
  const prepared = { questions: new Map(rules.questions.map((one) => [one.id, one])), layers };
  KNOWN.set(rules, prepared);
  return prepared;
}
