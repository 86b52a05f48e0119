import { say } from '../messages/say.js';
import { ledger } from '../ranking/ledger.js';
import type { Factors } from '../ranking/posterior.js';
import type { CauseId, RuleBase } from '../rulebase/records.js';
import type { Situation } from '../steps/situation.js';
import type { Ranked, Reason } from './diagnosis.js';
import { share } from './share.js';

/** Causes below this share are left out of the list; so many are shown at the most, with so many reasons each. */
const LEAST_SHOWN = 0.02;
const MOST_SHOWN = 6;
const REASONS_SHOWN = 5;
/** A weight smaller than this nobody can feel (Good: about one deciban). */
const LEAST_WEIGHT = 0.5;

/** The causes worth a line, likeliest first, each with its largest reasons for and against. */
export function rankedCauses(situation: Situation, factors: Factors): readonly Ranked[] {
  const { model, probabilities, rules } = situation;
  return model.hypotheses
    .map((hypothesis, h) => ({ hypothesis, probability: share(probabilities[h] ?? 0) }))
    .sort((a, b) => b.probability - a.probability || (a.hypothesis.id < b.hypothesis.id ? -1 : 1))
    .filter(({ probability }, rank) => rank === 0 || probability >= LEAST_SHOWN)
    .slice(0, MOST_SHOWN)
    .map(({ hypothesis, probability }) => ({
      id: hypothesis.id,
      kind: hypothesis.kind,
      title: titleOf(rules, hypothesis.id),
      ...(hypothesis.stage === undefined ? {} : { stage: hypothesis.stage }),
      probability,
      reasons: reasonsFor(situation, factors, hypothesis.id),
    }));
}

/** The title of a cause, of what is unnamed in a stage, or of nothing being wrong. */
export function titleOf(rules: RuleBase, id: CauseId): string {
  const cause = rules.causes.find((one) => one.id === id);
  if (cause) return cause.title;
  const stage = rules.manifest.stages.find((one) => `other-in-${one.id}` === id);
  return stage ? say('diagnosis.other', { stage: stage.title }) : rules.manifest.hypotheses.nothing.title;
}

function reasonsFor(
  { rules, model, evidence }: Situation,
  factors: Factors,
  cause: CauseId,
): readonly Reason[] {
  return ledger(model, evidence, cause, factors)
    .filter((entry) => entry.repeats !== undefined || Math.abs(entry.weight) >= LEAST_WEIGHT)
    .slice(0, REASONS_SHOWN)
    .map((entry) => {
      const finding = rules.findings.find((one) => one.id === entry.evidence.finding);
      const { finding: id, value } = entry.evidence;
      return {
        finding: id,
        title: finding?.title ?? id,
        value,
        shows: finding?.values[value]?.title ?? value,
        decibans: Math.round(entry.weight * 10) / 10,
        ...(entry.repeats === undefined ? {} : { repeats: entry.repeats }),
      };
    });
}
