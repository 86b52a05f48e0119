import { Engine, type TopLevelCondition } from 'json-rules-engine';
import type { Condition } from '../rulebase/condition.js';
import { mentions } from '../rulebase/mentions.js';
import type { FactId, FindingId, FindingRule } from '../rulebase/records.js';
import type { Facts } from './fact.js';

/** A rule of a finding, with the name that makes it the only one of its kind. */
export interface NamedRule {
  readonly name: string;
  readonly finding: FindingId;
  readonly rule: FindingRule;
}

/**
 * The rules that fire on these facts, sorted by name. A rule runs only when every fact it mentions is known:
 * json-rules-engine takes an unknown fact for "not", and one undefined fact ends the whole run.
 * A new engine each time, because one engine must not be run twice at once or after a failure.
 */
export async function runEngine(rules: readonly NamedRule[], facts: Facts): Promise<readonly NamedRule[]> {
  const ready = rules.filter(({ rule }) => mentions(rule.conditions).every((id) => facts.has(id)));
  if (ready.length === 0) return [];
  const engine = new Engine([], { pathResolver: refusePath });
  const needed: Record<FactId, unknown> = {};
  for (const { name, rule } of ready) {
    engine.addRule({ name, conditions: asRoot(rule.conditions), event: { type: 'evidence' } });
    for (const id of mentions(rule.conditions)) needed[id] = facts.get(id)?.value;
  }
  const { results } = await engine.run(needed);
  const fired = new Set(results.map((result) => result.name));
  return ready.filter(({ name }) => fired.has(name)).sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The engine wants all, any or not at the root; the copy keeps it from touching the rule base. */
function asRoot(condition: Condition): TopLevelCondition {
  const root = 'fact' in condition ? { all: [condition] } : condition;
  return structuredClone(root) as TopLevelCondition;
}

function refusePath(): never {
  throw new Error('rules may not use "path"');
}
