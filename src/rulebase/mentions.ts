import type { Condition } from './condition.js';
import type { FactId } from './records.js';

const KNOWN = new WeakMap<Condition, readonly FactId[]>();

/** The facts a condition mentions, each once, in the order they stand. Each condition is walked once. */
export function mentions(condition: Condition): readonly FactId[] {
  const known = KNOWN.get(condition) ?? walked(condition);
  KNOWN.set(condition, known);
  return known;
}

function walked(condition: Condition): readonly FactId[] {
  const seen = new Set<FactId>();
  const walk = (part: Condition): void => {
    if ('all' in part) part.all.forEach(walk);
    else if ('any' in part) part.any.forEach(walk);
    else if ('not' in part) walk(part.not);
    else seen.add(part.fact);
  };
  walk(condition);
  return [...seen];
}
