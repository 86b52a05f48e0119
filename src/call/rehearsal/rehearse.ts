import { modelOf } from '../../ranking/model.js';
import type { CauseId, QuestionId, RemedyId, RuleBase } from '../../rulebase/records.js';
import { visitOrder } from '../../steps/orders.js';
import { type Call, diagnosisOf } from '../call.js';
import { playScript } from '../scripted-call.js';
import { diceOf } from './dice.js';
import { type Callers, inventCaller } from './invent-caller.js';

/** One rehearsed call: what was wrong, what was done, what came of it. */
export interface Rehearsed {
  readonly cause: CauseId;
  readonly asked: readonly QuestionId[];
  readonly tried: readonly RemedyId[];
  /** What a visit at the end would do there. */
  readonly leftToDo: readonly RemedyId[];
  readonly isBack: boolean;
  /** The cause that the verdict names, and how sure it is. */
  readonly named: CauseId | undefined;
  readonly probability: number;
}

/**
 * A call held with an invented caller, whole. `cause` is thrown from the priors unless it is given;
 * `seed` a whole number: the same seed gives the same call.
 */
export async function rehearse(
  rules: RuleBase,
  digest: string,
  seed: number,
  options: Partial<Callers> & {
    readonly cause?: CauseId;
    /** Shown the call before each answer. */
    readonly before?: (call: Call) => void;
  } = {},
): Promise<Rehearsed> {
  const dice = diceOf(seed);
  const model = modelOf(rules);
  const callers: Callers = { truth: model, wrong: 0, cantTell: 0, ...options };
  const named = callers.truth.hypotheses.filter(({ kind }) => kind === 'cause');
  const cause = options.cause ?? named[dice.weighted(named.map(({ prior }) => prior))]?.id ?? '';
  const script = inventCaller(rules, cause, callers, dice);
  const keep = options.before ? { before: options.before } : {};
  const { call, events } = await playScript(rules, digest, script, `rehearsal-${seed}`, keep);
  const isBack = call.state.restoredBy !== undefined;
  const { verdict } = diagnosisOf(call);
  return {
    cause,
    asked: events.flatMap((event) => (event.type === 'answered' ? [event.question] : [])),
    tried: events.flatMap((event) => (event.type === 'tried' ? [event.remedy] : [])),
    leftToDo: isBack ? [] : visitOrder(call.situation).map(({ id }) => id),
    isBack,
    named: verdict.cause,
    probability: verdict.probability,
  };
}
