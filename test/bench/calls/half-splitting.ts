import type { Finding, QuestionId } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { bits } from './gains.js';
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
    (isFound ? undefined : sharpest(situation, halves(situation, masses), 2)) ??
    ((situation.probabilities[leader] ?? 0) >= CAUSE_FOUND
      ? undefined
      : sharpest(situation, within(situation, top), situation.model.hypotheses.length));
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

/** 0 before the cut that comes nearest to the half, 1 after it; stages stand in the order of the path. */
function halves(situation: Situation, masses: readonly number[]): Int32Array {
  const total = masses.reduce((sum, mass) => sum + mass, 0);
  let [before, cut, off] = [0, 0, Number.POSITIVE_INFINITY];
  masses.forEach((mass, at) => {
    before += mass;
    const miss = Math.abs(before - total / 2);
    if (miss < off) [cut, off] = [at, miss];
  });
  return Int32Array.from(situation.model.hypotheses, (_, h) => {
    const at = stageOf(situation, h);
    return at < 0 ? -1 : Number(at > cut);
  });
}

function within(situation: Situation, stage: number): Int32Array {
  return Int32Array.from(situation.model.hypotheses, (_, h) => (stageOf(situation, h) === stage ? h : -1));
}

function sharpest(situation: Situation, classOf: Int32Array, classes: number): QuestionId | undefined {
  const weighed = unknownFindings(situation)
    .map((finding): [Finding, number] => [finding, bits(situation, finding, classOf, classes)])
    .filter(([, gain]) => gain >= LEAST_BITS)
    .sort(([, a], [, b]) => b - a);
  for (const [finding] of weighed) {
    const first = questionsFor(situation, finding)?.[0];
    if (first) return first.id;
  }
  return undefined;
}
