import type { Dice } from '../../../src/call/rehearsal/dice.js';
import type { Model } from '../../../src/ranking/model.js';
import type {
  CauseId,
  Finding,
  FindingId,
  RuleBase,
  StageId,
  ValueId,
} from '../../../src/rulebase/records.js';

/** How often a later finding of a stage goes the way of the stage's first one; judged. */
const REPEATS = 0.3;

/**
 * One site with this cause, as a world of its own: every finding has one value, thrown from the world's shares.
 * Findings of a stage hang together: with a chance of 0.3 each after the first goes the first one's way, which
 * is to show its most usual value or any other. The ranking takes them as independent given the cause.
 */
export function correlatedSite(rules: RuleBase, truth: Model, cause: CauseId, dice: Dice): Model {
  const at = truth.hypotheses.findIndex(({ id }) => id === cause);
  const ways = new Map<StageId, boolean>();
  const values = new Map<FindingId, ValueId>();
  for (const finding of rules.findings) {
    const layout = truth.findings.get(finding.id);
    if (!layout) continue;
    const usual = mostUsual(finding);
    const row = layout.shares.map((shares) => shares[at] ?? 0);
    const way = ways.get(finding.stage);
    const follows = way !== undefined && dice.falls(REPEATS);
    const open = row.map((share, v) => (!follows || (layout.values[v] === usual) === way ? share : 0));
    const value = layout.values[dice.weighted(open)] ?? usual;
    if (way === undefined) ways.set(finding.stage, value === usual);
    values.set(finding.id, value);
  }
  const findings = [...truth.findings.values()].map((layout) => {
    const shares = layout.values.map((value) => [value === values.get(layout.id) ? 1 : 0]);
    return [layout.id, { ...layout, shares }] as const;
  });
  return { hypotheses: truth.hypotheses.slice(at, at + 1), findings: new Map(findings) };
}

function mostUsual({ values }: Finding): ValueId {
  return Object.entries(values).sort(([, a], [, b]) => b.usual - a.usual)[0]?.[0] ?? '';
}
