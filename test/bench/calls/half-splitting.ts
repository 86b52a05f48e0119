import type { Finding, QuestionId } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { bitsOnCause, bitsOnSide } from './gains.js';
import { questionsFor, unknownFindings } from './open-findings.js';
import type { Policy } from './policy.js';
import { leaderOf } from './suspicion.js';
import { bestRatio, cheapestFor, tryOrGate } from './tries.js';

/** A stage with this much of the probability is where the fault is looked for; judged. */
const STAGE_FOUND = 0.6;
const CAUSE_FOUND = 0.8;
/** Bits below which a question splits nothing. */
const LEAST_BITS = 0.05;

/**
 * Half-splitting by stage: the path is cut where half of the probability lies on either side, and the question is
 * asked that best tells on which side the fault is, whatever it costs. In the stage found, the question that best
 * tells its causes apart; then the leading cause's remedies, what else is worth a try, a visit.
 */
export const halfSplitting: Policy = (situation) => {
  const masses = stageMasses(situation);
  const top = masses.indexOf(Math.max(...masses));
  const isFound = (masses[top] ?? 0) >= STAGE_FOUND;
  const leader = leaderOf(situation);
  const question =
    (isFound ? undefined : bestSplit(situation, masses)) ??
    ((situation.probabilities[leader] ?? 0) >= CAUSE_FOUND ? undefined : bestWithin(situation, top));
  if (question !== undefined) return { kind: 'ask', question };
  const remedy = cheapestFor(situation, leader) ?? bestRatio(situation);
  return remedy ? tryOrGate(remedy) : { kind: 'visit' };
};

function stageOf({ rules, model }: Situation, hypothesis: number): number {
  const stage = model.hypotheses[hypothesis]?.stage;
  return rules.manifest.stages.findIndex(({ id }) => id === stage);
}

function stageMasses(situation: Situation): readonly number[] {
  const masses = situation.rules.manifest.stages.map(() => 0);
  situation.probabilities.forEach((p, h) => {
    const at = stageOf(situation, h);
    if (at >= 0) masses[at] = (masses[at] ?? 0) + p;
  });
  return masses;
}

/** Tells best on which side of the cut it is that comes nearest to the half; stages stand in the order of the path. */
function bestSplit(situation: Situation, masses: readonly number[]): QuestionId | undefined {
  const total = masses.reduce((sum, mass) => sum + mass, 0);
  let [before, cut, off] = [0, 0, Number.POSITIVE_INFINITY];
  masses.forEach((mass, at) => {
    before += mass;
    const miss = Math.abs(before - total / 2);
    if (miss < off) [cut, off] = [at, miss];
  });
  const sides = [
    weightsWhere(situation, (at) => at >= 0 && at <= cut),
    weightsWhere(situation, (at) => at > cut),
  ];
  return sharpest(situation, (finding) => bitsOnSide(situation, finding, sides));
}

function bestWithin(situation: Situation, stage: number): QuestionId | undefined {
  const weights = weightsWhere(situation, (at) => at === stage);
  return sharpest(situation, (finding) => bitsOnCause(situation, finding, weights));
}

/** The probabilities of the hypotheses of these stages, 0 for the others. */
function weightsWhere(situation: Situation, isIn: (stage: number) => boolean): Float64Array {
  return Float64Array.from(situation.probabilities, (p, h) => (isIn(stageOf(situation, h)) ? p : 0));
}

function sharpest(situation: Situation, bits: (finding: Finding) => number): QuestionId | undefined {
  const weighed = unknownFindings(situation)
    .map((finding): [Finding, number] => [finding, bits(finding)])
    .filter(([, gain]) => gain >= LEAST_BITS)
    .sort(([, a], [, b]) => b - a);
  for (const [finding] of weighed) {
    const first = questionsFor(situation, finding)?.[0];
    if (first) return first.id;
  }
  return undefined;
}
