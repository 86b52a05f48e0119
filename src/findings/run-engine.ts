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

/** By rule, what came of it for values of the facts it mentions. A rule is a pure function of them. */
const MEMO = new WeakMap<FindingRule, Map<string, boolean>>();
/** A rule of several answers meets few combinations in a call; more would only keep memory. */
const REMEMBERED = 64;

/**
 * The rules that fire on these facts, sorted by name. A rule runs only when every fact it mentions is known:
 * json-rules-engine takes an unknown fact for "not", and one undefined fact ends the whole run.
 * Only rules whose facts read otherwise than ever before run again; what came of the others is remembered.
 */
export async function runEngine(rules: readonly NamedRule[], facts: Facts): Promise<readonly NamedRule[]> {
  const ready = rules.filter(({ rule }) => mentions(rule.conditions).every((id) => facts.has(id)));
  const keyed = ready.map((named) => {
    const memo = memoOf(named.rule);
    const key = keyOf(named.rule, facts);
    return { named, memo, key, known: memo.get(key) };
  });
  const unknown = keyed.filter(({ known }) => known === undefined).map(({ named }) => named);
  const fired = unknown.length > 0 ? await fresh(unknown, facts) : new Set<string>();
  for (const { named, memo, key, known } of keyed) {
    if (known !== undefined) continue;
    if (memo.size >= REMEMBERED) memo.clear();
    memo.set(key, fired.has(named.name));
  }
  // Not read from the memo again: another run may have emptied it while this one waited.
  return keyed
    .filter(({ named, known }) => known ?? fired.has(named.name))
    .map(({ named }) => named)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function memoOf(rule: FindingRule): Map<string, boolean> {
  const known = MEMO.get(rule) ?? new Map<string, boolean>();
  MEMO.set(rule, known);
  return known;
}

function keyOf({ conditions }: FindingRule, facts: Facts): string {
  return JSON.stringify(mentions(conditions).map((id) => facts.get(id)?.value));
}

/**
 * The names of the rules that fire, by an engine of their own: one engine must not be run twice at once, nor after
 * a failure. Every fact they mention is known.
 */
export async function fresh(rules: readonly NamedRule[], facts: Facts): Promise<ReadonlySet<string>> {
  const engine = new Engine([], { pathResolver: refusePath });
  const needed: Record<FactId, unknown> = {};
  for (const { name, rule } of rules) {
    engine.addRule({ name, conditions: asRoot(rule.conditions), event: { type: 'evidence' } });
    for (const id of mentions(rule.conditions)) needed[id] = facts.get(id)?.value;
  }
  const { results } = await engine.run(needed);
  return new Set(results.map((result) => String(result.name)));
}

/** The engine wants all, any or not at the root; the copy keeps it from touching the rule base. */
function asRoot(condition: Condition): TopLevelCondition {
  const root = 'fact' in condition ? { all: [condition] } : condition;
  return structuredClone(root) as TopLevelCondition;
}

function refusePath(): never {
  throw new Error('rules may not use "path"');
}
