import type { Condition } from './condition.js';
import type { FactId } from './records.js';

/** The facts a condition mentions, each once, in the order they stand. */
export function mentions(condition: Condition): readonly FactId[] {
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
