import type { Situation } from '../../../src/steps/situation.js';

/** From this many times as often as usual, a value points at a cause. */
const POINTS_FROM = 10;

/** The place of the likeliest hypothesis in the model. */
export function leaderOf({ probabilities }: Pick<Situation, 'probabilities'>): number {
  return probabilities.reduce((best, p, h) => (p > (probabilities[best] ?? 0) ? h : best), 0);
}

/**
 * Whether something known points at the leading hypothesis: a defect of it, or a value that shows at least ten
 * times as often under it as usual.
 */
export function pointsAtLeader(situation: Situation): boolean {
  const { rules, model, evidence } = situation;
  const leader = leaderOf(situation);
  return evidence.some(({ finding, value }) => {
    const known = rules.findings.find(({ id }) => id === finding)?.values[value];
    const layout = model.findings.get(finding);
    if (!known || !layout) return false;
    if (known.defect && (known.defect.cause ?? model.hypotheses[leader]?.id) === model.hypotheses[leader]?.id)
      return true;
    const share = layout.shares[layout.values.indexOf(value)]?.[leader] ?? 0;
    return share >= POINTS_FROM * known.usual;
  });
}
