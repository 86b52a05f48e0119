import type { RuleBase } from '../../../src/rulebase/records.js';
import { KINDS } from '../../../src/rulebase/records.js';

/**
 * The rule base so many times over, each copy with ids of its own: ten times the causes, findings, questions and
 * remedies. Only the first copy keeps its opening and what an answer is besides evidence.
 */
export function copiesOf(rules: RuleBase, times: number): RuleBase {
  const ids = new Set(KINDS.flatMap((kind) => rules[kind].map(({ id }) => id)));
  const copies = Array.from({ length: times }, (_, at) =>
    at === 0 ? rules : renamed(rules, ids, `-copy-${at}`),
  );
  const parts = KINDS.map((kind) => [kind, copies.flatMap((copy): readonly unknown[] => copy[kind])]);
  return { ...rules, ...Object.fromEntries(parts) };
}

function renamed(rules: RuleBase, ids: ReadonlySet<string>, suffix: string): RuleBase {
  const rename = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return ids.has(value) && !WORDS.has(key) ? value + suffix : value;
    if (Array.isArray(value)) return value.map((one) => rename(one, key));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .filter(([name]) => name !== 'opening' && name !== 'part')
        .map(([name, inner]) => [ids.has(name) ? name + suffix : name, rename(inner, name)]),
    );
  };
  const { manifest } = rules;
  return { ...(rename({ ...rules, manifest: undefined }, '') as RuleBase), manifest };
}

/** Fields whose text may be the same as an id and means something else. */
const WORDS: ReadonlySet<string> = new Set([
  'stage',
  'place',
  'who',
  'sum',
  'field',
  'cautions',
  'title',
  'type',
  'kind',
]);
