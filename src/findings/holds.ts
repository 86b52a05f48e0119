import type { Condition, Test } from '../rulebase/condition.js';
import type { Fact, Facts } from './fact.js';

/**
 * Whether a condition holds, in three values: `undefined` is *not known yet*. A fact nobody knows makes its
 * test unknown; `all` is false as soon as one part is, `any` true as soon as one part is (Kleene's strong logic).
 * On facts that are all known it agrees with json-rules-engine; a property test holds that.
 */
export function holds(condition: Condition, facts: Facts): boolean | undefined {
  if ('all' in condition) return combine(condition.all, facts, false);
  if ('any' in condition) return combine(condition.any, facts, true);
  if ('not' in condition) {
    const inner = holds(condition.not, facts);
    return inner === undefined ? undefined : !inner;
  }
  const fact = facts.get(condition.fact);
  return fact && passes(condition, fact.value);
}

/** Decided as soon as one part gives `deciding`; unknown where a part is and none decides. */
function combine(parts: readonly Condition[], facts: Facts, deciding: boolean): boolean | undefined {
  let unknown = false;
  for (const part of parts) {
    const held = holds(part, facts);
    if (held === deciding) return deciding;
    if (held === undefined) unknown = true;
  }
  return unknown ? undefined : !deciding;
}

function passes(test: Test, value: Fact['value']): boolean {
  const wanted = test.value;
  switch (test.operator) {
    case 'equal':
      return value === wanted;
    case 'notEqual':
      return value !== wanted;
    case 'in':
      return Array.isArray(wanted) && wanted.includes(value);
    case 'notIn':
      return Array.isArray(wanted) && !wanted.includes(value);
    case 'contains':
      return Array.isArray(value) && value.includes(wanted);
    case 'doesNotContain':
      return Array.isArray(value) && !value.includes(wanted);
    default:
      return (
        typeof value === 'number' && typeof wanted === 'number' && compares(test.operator, value, wanted)
      );
  }
}

function compares(operator: string, value: number, wanted: number): boolean {
  switch (operator) {
    case 'lessThan':
      return value < wanted;
    case 'lessThanInclusive':
      return value <= wanted;
    case 'greaterThan':
      return value > wanted;
    default:
      return value >= wanted;
  }
}
