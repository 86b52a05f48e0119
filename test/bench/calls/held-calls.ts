import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { inventCaller } from '../../../src/call/rehearsal/invent-caller.js';
import { modelOf } from '../../../src/ranking/model.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import { correlatedSite } from './correlated-site.js';
import { type Held, hold } from './hold.js';
import { opened } from './opened.js';
import { perturbedTruth } from './perturbed-truth.js';
import { POLICIES } from './policies.js';

/** How many calls of what kind. */
export interface CallsWanted {
  readonly calls: number;
  readonly seed: number;
  /** Share of answers that are wrong, and that nobody can tell; 0 to 1. */
  readonly wrong: number;
  readonly cantTell: number;
  /** A visit costs so many times what the rule base says; other than 1, only our own policy is held. */
  readonly visitFactor: number;
  /** Number of the first call, and only every so many: so that the calls can be shared out. */
  readonly from?: number;
  readonly every?: number;
}

/** So many calls are enough for a policy that only shows what better numbers would bring. */
const FEWER = 300;

/** Seeds lie so far apart that calls of two benches have none in common. */
const APART = 1_000_003;

/**
 * Every call under every policy; each policy meets the same callers. The cause, which may be something unnamed or
 * nothing any more, and what the site shows come from one perturbed world a seed; the same seed, the same calls.
 */
export function heldCalls(rules: RuleBase, wanted: CallsWanted): readonly Held[] {
  const { calls, seed, visitFactor, from = 0, every = 1 } = wanted;
  const model = modelOf(rules);
  const truth = perturbedTruth(model, seed);
  const priced = withVisit(rules, visitFactor);
  const policies = visitFactor === 1 ? POLICIES : POLICIES.filter(({ name }) => name === 'ours');
  const held: Held[] = [];
  for (let call = from; call < calls; call += every) {
    const dice = diceOf(seed * APART + call);
    const cause = truth.hypotheses[dice.weighted(truth.hypotheses.map(({ prior }) => prior))]?.id ?? '';
    const callers = { ...wanted, truth: correlatedSite(rules, truth, cause, dice) };
    const begun = opened(priced, model, inventCaller(rules, cause, callers, dice));
    for (const policy of policies)
      if (policy.ranksByTruth !== true || call < FEWER)
        held.push(hold(priced, policy.ranksByTruth ? truth : model, begun, policy, cause));
  }
  return held;
}

function withVisit(rules: RuleBase, factor: number): RuleBase {
  if (factor === 1) return rules;
  const { labourMinutes, waitDays, minutesPerDay } = rules.manifest.visit;
  const visit = { labourMinutes: labourMinutes * factor, waitDays: waitDays * factor, minutesPerDay };
  return { ...rules, manifest: { ...rules.manifest, visit } };
}
