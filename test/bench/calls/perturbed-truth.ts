import type { Dice } from '../../../src/call/rehearsal/dice.js';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import type { FindingModel, Model } from '../../../src/ranking/model.js';

/** Spread of the factors, as the standard deviation of their natural logarithm; judged. */
const SHARE_SIGMA = 0.5;
const PRIOR_SIGMA = 0.4;

/**
 * Another world than the rule base's: each share of each row times a log-normal factor, each prior times another,
 * and each row brought back to 1. The same for the same seed. Callers drawn from it are not what the rule base
 * expects, as real ones are not.
 */
export function perturbedTruth({ hypotheses, findings }: Model, seed: number): Model {
  const dice = diceOf(seed);
  const priors = normalised(hypotheses.map(({ prior }) => prior * logNormal(dice, PRIOR_SIGMA)));
  return {
    hypotheses: hypotheses.map((one, h) => ({ ...one, prior: priors[h] ?? 0 })),
    findings: new Map(
      [...findings].map(([id, finding]) => [id, { ...finding, shares: moved(finding, dice) }]),
    ),
  };
}

function moved({ shares }: FindingModel, dice: Dice): FindingModel['shares'] {
  const raw = shares.map((row) => row.map((share) => share * logNormal(dice, SHARE_SIGMA)));
  const totals = (raw[0] ?? []).map((_, h) => raw.reduce((sum, row) => sum + (row[h] ?? 0), 0));
  return raw.map((row) => row.map((share, h) => share / (totals[h] ?? 1)));
}

function normalised(weights: readonly number[]): readonly number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

/** A factor whose logarithm is normal with mean 0 (Box, Muller 1958). */
function logNormal(dice: Dice, sigma: number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - dice.number()));
  return Math.exp(sigma * radius * Math.cos(2 * Math.PI * dice.number()));
}
