import type { Manifest } from '../rulebase/manifest.js';
import type { KitId, QuestionId, Remedy, Who } from '../rulebase/records.js';
import { candidates, round } from './look-ahead.js';
import { groupToDecide } from './open-questions.js';
import { type OpenRemedy, openRemedies } from './open-remedies.js';
import { chanceOf, greedyPlan, type Try } from './repair-plan.js';
import type { Situation } from './situation.js';
import { carefulPlan, mendsUnseen, quickPlan, worthTrying } from './while-away.js';

export interface RepairOrder {
  readonly remedies: readonly Remedy[];
  /** Expected minutes until the picture is back, the visit included. */
  readonly minutes: number;
}

/** What to try now, in order, before someone is sent. */
export function repairOrder(situation: Situation): RepairOrder {
  const open = worthTrying(situation);
  const plan = carefulPlan(
    situation,
    open.map(({ attempt }) => attempt),
  );
  const remedies = plan.order.flatMap(
    ({ remedy }) => open.find((one) => one.remedy.id === remedy)?.remedy ?? [],
  );
  return { remedies, minutes: plan.minutes };
}

/** Of these questions, those that would now save more minutes than they take: worth asking, if not the best. */
export function worthAsking(situation: Situation, among: ReadonlySet<QuestionId>): readonly QuestionId[] {
  const { probabilities, here } = situation;
  const tries = worthTrying(situation).map(({ attempt }) => attempt);
  const now = quickPlan(situation, mendsUnseen(situation), probabilities, here, tries).minutes;
  return candidates(situation, tries, among)
    .filter(({ expected }) => round(expected) < round(now))
    .flatMap(({ questions }) => questions.map(({ id }) => id));
}

const ALL_HANDS: ReadonlySet<Who> = new Set<Who>(['anyone', 'owner', 'installer', 'help-desk']);
/** Past this many a visit's list is no longer read. */
const VISIT_LENGTH = 6;
/** Chance from which on something is worth being prepared for: one visit in thirty. */
const WORTH_PREPARING = 1 / 30;

/**
 * What a technician who goes there with everything would do, in order: whatever can't be done by phone included,
 * and whatever the caller passed over.
 */
export function visitOrder(situation: Situation): readonly Remedy[] {
  const open = openThere(situation);
  return visitTries(situation).flatMap(
    ({ remedy }) => open.find((one) => one.remedy.id === remedy)?.remedy ?? [],
  );
}

/** The same, laid out for the sums; with `weights`, as it would be if the hypotheses had these. */
export function visitTries(
  situation: Situation,
  weights: readonly number[] = situation.probabilities,
): readonly Try[] {
  const { here, rules } = withEverything(situation);
  const alive = weights.reduce((sum, weight) => sum + weight, 0);
  const tries = openThere(situation)
    .map(({ attempt }) => attempt)
    .filter((attempt) => chanceOf(attempt, weights) >= WORTH_PREPARING * alive);
  return greedyPlan(weights, here, tries, withoutAnother(rules.manifest)).order.slice(0, VISIT_LENGTH);
}

/** Nobody who is there goes home because a second visit would be cheaper than what is left to do: it is all done. */
function withoutAnother(manifest: Manifest): Manifest {
  return { ...manifest, visit: { ...manifest.visit, labourMinutes: Number.MAX_SAFE_INTEGER } };
}

const THERE = new WeakMap<Situation, readonly OpenRemedy[]>();

/**
 * What may be done there. Whether a remedy makes sense can be seen there, though the caller could not tell; what a gate
 * asks, such as whether an alarm hangs on the line, has to be known before.
 */
function openThere(situation: Situation): readonly OpenRemedy[] {
  const known = THERE.get(situation);
  if (known) return known;
  const there = withEverything(situation);
  const told = [...situation.answers].filter(([, { value }]) => value.kind !== 'cant-tell');
  const open = openRemedies({ ...there, answers: new Map(told) }).filter(
    ({ remedy: { gate } }) => !gate || groupToDecide(there, [gate.condition]) !== undefined,
  );
  THERE.set(situation, open);
  return open;
}

function withEverything(situation: Situation): Situation {
  const kit: ReadonlySet<KitId> = new Set(situation.rules.manifest.kit.map(({ id }) => id));
  return { ...situation, hands: ALL_HANDS, kit, here: 'cabinet', passed: new Set() };
}
