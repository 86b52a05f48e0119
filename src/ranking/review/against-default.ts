import type { CauseId, FindingId, RuleBase, ValueId } from '../../rulebase/records.js';
import { type Model, otherIn } from '../model.js';

/** A cause's own sign that says quite another thing than its stage. */
export interface AgainstDefault {
  readonly cause: CauseId;
  readonly finding: FindingId;
  /** What each shows most. */
  readonly own: ValueId;
  readonly usual: ValueId;
}

/** From this share on, a stage is taken to say something; judged. */
const SAYS = 0.5;
/** A cause of such a stage that shows the same value less often than this says the contrary; judged. */
const CONTRARY = 0.2;

/**
 * Own signs that give a value hardly ever which the default of the stage gives mostly. A default that only says what
 * is usual anyway says nothing of the stage, and nothing is at odds with it.
 */
export function againstDefaults(rules: RuleBase, model: Model): readonly AgainstDefault[] {
  return rules.causes.flatMap((cause) => {
    const own = model.hypotheses.findIndex(({ id }) => id === cause.id);
    const stage = model.hypotheses.findIndex(({ id }) => id === otherIn(cause.stage));
    return rules.findings.flatMap((finding): readonly AgainstDefault[] => {
      const layout = model.findings.get(finding.id);
      if (!layout || cause.signs[finding.id] === undefined || !finding.defaults) return [];
      const shares = (at: number) => layout.shares.map((row) => row[at] ?? 0);
      const usual = most(shares(stage));
      const plain = layout.values.map((value) => finding.values[value]?.usual ?? 0);
      const saysSomething = (shares(stage)[usual] ?? 0) >= SAYS && usual !== most(plain);
      const isContrary = saysSomething && (shares(own)[usual] ?? 0) < CONTRARY;
      if (!isContrary) return [];
      const values = layout.values;
      return [
        {
          cause: cause.id,
          finding: finding.id,
          own: values[most(shares(own))] ?? '',
          usual: values[usual] ?? '',
        },
      ];
    });
  });
}

function most(shares: readonly number[]): number {
  return shares.indexOf(Math.max(...shares));
}
