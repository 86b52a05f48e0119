import { KINDS, type RuleBase } from '../../rulebase/records.js';
import type { Json } from '../../web/columns.js';
import { columnsOf, type Layout } from './columns-of.js';

/** What only reviews, comparisons and articles read of a record; the page does none of them with the rules. */
const UNREAD = new Set(['source', 'because', 'alsoExplainedBy']);

/** The rule base as the page has it: without what nothing in the page reads, and without what was retired. */
export function pageRules(rules: RuleBase): Json {
  const kinds = KINDS.map((kind) => [kind, kind === 'retired' ? [] : rules[kind].map(withoutUnread)]);
  return { ...Object.fromEntries(kinds), manifest: withoutUnread(rules.manifest) };
}

/** The page's rule base in columns, as `readColumns` reads it. */
export function packedRuleText(rules: RuleBase): string {
  return columnsOf(pageRules(rules), OF_RULES);
}

function withoutUnread(record: object): Json {
  return JSON.parse(JSON.stringify(record, (name, value) => (UNREAD.has(name) ? undefined : value)));
}

const MAPS = /(?:\/(?:signs|values|agrees|sign|as|given|words)|\/signs\[\])$/;
const CONDITION = /^(?:conditions|condition|when|not)$/;

/** A condition is the same wherever it stands, and so is one inside another. */
const OF_RULES: Layout = {
  isMap: (place) => MAPS.test(place),
  inside: (place, name) => {
    if (CONDITION.test(name) || (place === 'condition[]' && name === '[]')) return 'condition';
    if (place === 'condition' && /^(?:all|any)$/.test(name)) return 'conditions';
    if (name !== '[]') return `${place}/${name}`;
    return place === 'conditions' ? 'condition' : `${place}[]`;
  },
};
