import type { CauseId, FindingId, RuleBase } from '../rulebase/records.js';
import type { Evidence } from './evidence.js';
import type { Model } from './model.js';

/** From this many times the usual share on, a cause explains a value: about three decibans, a weight one can feel. */
export const EXPLAINS_FROM = 2;

/**
 * The findings that struck causes explain: those for which such a cause has a sign of its own and the value seen
 * is at least twice as likely under it as usual (a lit socket light explains nothing), with whatever says the same thing (`repeats`). They are spent; what is still
 * wrong has to be found in the others. A circumstance (a lead or Wi-Fi?) holds as before and is never spent.
 */
export function explainedBy(
  rules: RuleBase,
  model: Model,
  evidence: readonly Evidence[],
  struck: readonly CauseId[],
): readonly FindingId[] {
  const groupOf = (id: FindingId): FindingId => model.findings.get(id)?.group ?? id;
  const groups = evidence
    .filter(({ finding, value }) => {
      const usual = rules.findings.find((one) => one.id === finding)?.values[value]?.usual ?? 1;
      const layout = model.findings.get(finding);
      const row = layout?.shares[layout.values.indexOf(value)];
      return struck.some((id) => {
        const own = rules.causes.find((cause) => cause.id === id)?.signs[finding];
        const at = model.hypotheses.findIndex((one) => one.id === id);
        return own !== undefined && (row?.[at] ?? 0) >= EXPLAINS_FROM * usual;
      });
    })
    .map(({ finding }) => groupOf(finding));
  const lasting = new Set(rules.findings.filter(({ circumstance }) => circumstance).map(({ id }) => id));
  return evidence
    .map(({ finding }) => finding)
    .filter((id) => groups.includes(groupOf(id)) && !lasting.has(id));
}
