import { holds } from '../findings/holds.js';
import { inWords, say } from '../messages/say.js';
import type { FactId, Remedy, RuleBase } from '../rulebase/records.js';
import { askedBefore } from '../steps/open-remedies.js';
import { repairOrder, visitOrder } from '../steps/orders.js';
import type { Situation } from '../steps/situation.js';
import type { Diagnosis, PlannedStep } from './diagnosis.js';

/** What to try next, in order, in words. */
export function planOf(situation: Situation): readonly PlannedStep[] {
  return repairOrder(situation).remedies.map((remedy) => plannedStep(situation, remedy));
}

/** A remedy in words. What its gate asks for stands with the cautions until the gate is known to be open. */
export function plannedStep(situation: Situation, remedy: Remedy): PlannedStep {
  const { rules, settled } = situation;
  const { gate, askBefore = [] } = remedy;
  const unseen = askedBefore(situation, remedy).filter(({ id }) => askBefore.includes(id));
  const shut = gate && holds(gate.condition, settled.facts) !== true ? [gate.why] : [];
  return {
    remedy: remedy.id,
    title: remedy.title,
    who: remedy.who,
    where: rules.manifest.places.find(({ id }) => id === remedy.place)?.title ?? remedy.place,
    minutes: remedy.minutes,
    how: [...remedy.steps, ...sumsOf(situation, remedy)],
    cautions: [
      ...unseen.map(({ title }) => say('diagnosis.look-first', { title })),
      ...shut,
      ...cautionsOf(rules, remedy),
    ],
    check: remedy.check,
    undo: remedy.undo,
  };
}

/** The sums that go with a remedy or a spoilt check, line by line, as far as they are known. */
export function sumsOf(
  { settled }: Pick<Situation, 'settled'>,
  { sums = [] }: { readonly sums?: readonly FactId[] },
): readonly string[] {
  return sums.flatMap((id) => settled.facts.get(id)?.lines ?? []).map(inWords);
}

/** The words of caution that belong before a remedy. */
export function cautionsOf(rules: RuleBase, { cautions = [] }: Pick<Remedy, 'cautions'>): readonly string[] {
  return cautions.flatMap((id) => rules.cautions.find((one) => one.id === id)?.words ?? []);
}

/** The visit: labour and waiting as two figures, what to do there in order, what to bring. */
export function visitOf(situation: Situation): NonNullable<Diagnosis['visit']> {
  const { rules } = situation;
  const remedies = visitOrder(situation);
  const kit = remedies
    .flatMap(({ needs = [] }) => needs)
    .map((id) => rules.manifest.kit.find((one) => one.id === id)?.title ?? id);
  const bring = remedies.flatMap((remedy) => remedy.bring ?? []);
  return {
    minutes: rules.manifest.visit.labourMinutes,
    days: rules.manifest.visit.waitDays,
    doThere: remedies.map(({ title }) => title),
    bring: [...new Set([...kit, ...bring])],
    cautions: [...new Set(remedies.flatMap((remedy) => cautionsOf(rules, remedy)))],
  };
}
