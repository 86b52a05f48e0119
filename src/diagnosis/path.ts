import type { StageId } from '../rulebase/records.js';
import type { Situation } from '../steps/situation.js';
import type { DefectReport, PathStage, StageState, Works } from './diagnosis.js';
import { share } from './share.js';

/** From this share of the probability on a stage is suspect. */
const SUSPECT_FROM = 0.2;
/** From this share on it is suspect even where a check spoke for it: one answer proves nothing for good. */
const SUSPECT_ALL_THE_SAME = 0.5;

/** The picture path, stage by stage: seen to work, faulty by arithmetic, suspect, or not looked at. */
export function picturePath(
  { rules, model, probabilities }: Situation,
  works: readonly Works[],
  defects: readonly DefectReport[],
): readonly PathStage[] {
  const good = new Set(works.flatMap(({ clears }) => clears));
  const faulty = new Set(
    defects.flatMap(({ finding }) => rules.findings.find((one) => one.id === finding)?.stage ?? []),
  );
  return rules.manifest.stages.map((stage) => {
    const sum = model.hypotheses.reduce(
      (total, one, h) => (one.stage === stage.id ? total + (probabilities[h] ?? 0) : total),
      0,
    );
    const probability = share(sum);
    return { ...stage, state: stateOf(stage.id, probability, good, faulty), probability };
  });
}

function stateOf(
  id: StageId,
  probability: number,
  good: ReadonlySet<StageId>,
  faulty: ReadonlySet<StageId>,
): StageState {
  if (faulty.has(id)) return 'faulty';
  if (probability >= SUSPECT_ALL_THE_SAME) return 'suspect';
  if (good.has(id)) return 'good';
  return probability >= SUSPECT_FROM ? 'suspect' : 'unseen';
}
