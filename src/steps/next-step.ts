import { conflicts } from '../findings/contradictions.js';
import { defectsOf } from '../findings/defects.js';
import { holds } from '../findings/holds.js';
import type { FindingId, Question } from '../rulebase/records.js';
import { beforeFirstTry } from './before-first-try.js';
import { beforeVisit } from './before-visit.js';
import { candidates, round, type Telling } from './look-ahead.js';
import { canDo, groupToDecide } from './open-questions.js';
import { type OpenRemedy, openRemedies } from './open-remedies.js';
import type { RepairPlan } from './repair-plan.js';
import { secondLook } from './second-look.js';
import { passKey, type Situation } from './situation.js';
import type { Ending, Step } from './step.js';
import { carefulPlan, isWatchedFor, mendsUnseen, onlyWaits, quickPlan, worthTrying } from './while-away.js';

/**
 * What to do next: end where an answer ends the call; answers that contradict each other; a spoilt check;
 * the opening; reading back numbers a defect rests on; whether a failed check can be relied on; then whatever
 * leaves the fewest expected minutes until the picture is back (Heckerman, Breese, Rommelse 1995), with a second
 * look at a shaky answer before something is done on the strength of it, and what tells much before the first try.
 */
export function nextStep(situation: Situation): Step {
  return (
    endingOf(situation) ??
    conflictStep(situation) ??
    spoiltStep(situation) ??
    openingStep(situation) ??
    readBackStep(situation) ??
    soundnessStep(situation) ??
    cheapestStep(situation)
  );
}

function endingOf({ rules, answers }: Situation): Step | undefined {
  for (const question of rules.questions) {
    const value = answers.get(question.id)?.value;
    if (value?.kind !== 'choice' || !('choices' in question.answer)) continue;
    const ends = question.answer.choices.find((choice) => choice.id === value.id)?.ends;
    if (ends) return { kind: 'end', how: ends satisfies Ending };
  }
  return undefined;
}

function conflictStep({ rules, settled, left }: Situation): Step | undefined {
  const conflict = conflicts(rules, settled).find(({ id }) => !left.has(id));
  return conflict && { kind: 'check-answers', conflict };
}

function spoiltStep({ settled, left }: Situation): Step | undefined {
  const fault = settled.testerFaults.find((id) => !left.has(id));
  return fault === undefined ? undefined : { kind: 'spoilt-check', fault };
}

/** The opening questions still to be put, in their order; those whose condition is not known to hold are skipped. */
function openingStep(situation: Situation): Step | undefined {
  const next = openingLeft(situation)[0];
  return next && { kind: 'ask', question: next.id, group: [next.id], purpose: { kind: 'opening' } };
}

function openingLeft(situation: Situation): readonly Question[] {
  const { rules, askedBefore, passed, settled } = situation;
  return rules.questions
    .filter(
      (one) => one.opening !== undefined && !askedBefore.has(one.id) && !passed.has(passKey('ask', one.id)),
    )
    .filter((one) => canDo(situation, one) && (!one.when || holds(one.when, settled.facts) === true))
    .sort((a, b) => (a.opening ?? 0) - (b.opening ?? 0));
}

/** A number read out over the phone is read back, digit by digit, before anything is called proven. */
function readBackStep({ rules, answers, settled, left }: Situation): Step | undefined {
  for (const defect of defectsOf(rules, answers, settled)) {
    const question = defect.unconfirmed.find((id) => answers.has(id) && !left.has(`read-back:${id}`));
    if (question !== undefined)
      return { kind: 'read-back', question, finding: defect.finding, because: 'sum' };
  }
  return undefined;
}

/** Longer than this nobody asks after the way a check was made; judged. */
const SOUNDNESS_MINUTES = 2;

/**
 * A check that failed tells only something if it was made rightly: a page that does not open on a computer which
 * hangs on another network says nothing of the camera. Asked where few minutes decide it; one that went well needs no doubt.
 */
function soundnessStep(situation: Situation): Step | undefined {
  const { rules, settled, left } = situation;
  const failed = (id: FindingId): boolean => {
    const known = settled.findings.get(id);
    const value = rules.findings.find((one) => one.id === id)?.values[known?.value ?? ''];
    return value !== undefined && value.clears === undefined;
  };
  for (const { id, when, spoils } of rules['tester-faults']) {
    if (left.has(id) || !spoils.some(failed) || holds(when, settled.facts) !== undefined) continue;
    const group = groupToDecide(situation, [when]) ?? [];
    const minutes = group.reduce((sum, question) => sum + question.minutes, 0);
    const first = group[0];
    if (!first || minutes > SOUNDNESS_MINUTES) continue;
    const purpose = { kind: 'soundness', fault: id } as const;
    return { kind: 'ask', question: first.id, group: group.map((one) => one.id), purpose };
  }
  return undefined;
}

/** Saving less than this is no reason to make somebody look once more, in minutes; judged. */
const WORTH_A_LOOK = 1;

function cheapestStep(situation: Situation): Step {
  const unseen = mendsUnseen(situation);
  const open = worthTrying(situation);
  const tries = open.map(({ attempt }) => attempt);
  const asking = candidates(situation, tries)[0];
  const now = quickPlan(situation, unseen, situation.probabilities, situation.here, tries).minutes;
  const asked = asking && round(asking.expected) < round(now) ? askFor(asking) : undefined;
  if (asked) return asked;
  // Only once something is about to be done: before that, other questions tell whether it was heard rightly.
  const look = secondLook(
    situation,
    (weights, place) => quickPlan(situation, unseen, weights, place, tries).minutes,
  );
  if (look && now - look.expected > WORTH_A_LOOK)
    return { kind: 'read-back', question: look.question, finding: look.finding, because: 'weight' };
  const plan = carefulPlan(situation, tries);
  const telling = beforeFirstTry(situation, plan.order[0]);
  const told = telling && askFor(telling);
  if (told) return told;
  return repairStep(situation, open, plan);
}

function askFor({ questions, settles }: Pick<Telling, 'questions' | 'settles'>): Step | undefined {
  const [first] = questions;
  const group = questions.map(({ id }) => id);
  return first && { kind: 'ask', question: first.id, group, purpose: { kind: 'finding', finding: settles } };
}

function repairStep(situation: Situation, open: readonly OpenRemedy[], plan: RepairPlan): Step {
  const chosen = open.find(({ remedy }) => remedy.id === plan.order[0]?.remedy) ?? watching(situation);
  if (!chosen)
    return visitStep(situation) ?? closingStep(situation) ?? { kind: 'visit', minutes: plan.minutes };
  const gate = chosen.gate[0];
  if (gate) {
    const group = chosen.gate.map(({ id }) => id);
    return { kind: 'ask', question: gate.id, group, purpose: { kind: 'gate', remedy: chosen.remedy.id } };
  }
  return {
    kind: 'try',
    remedy: chosen.remedy.id,
    plan: plan.order.map((attempt) => attempt.remedy),
    minutes: plan.minutes,
  };
}

function visitStep(situation: Situation): Step | undefined {
  const telling = beforeVisit(situation);
  return telling && askFor(telling);
}

function watching(situation: Situation): OpenRemedy | undefined {
  return isWatchedFor(situation) ? openRemedies(situation).find(onlyWaits) : undefined;
}

/** Before someone is sent: what was promised belongs in the ticket. */
function closingStep({ rules, askedBefore, passed }: Situation): Step | undefined {
  const next = rules.questions.find(
    ({ id, part }) => part === 'promised' && !askedBefore.has(id) && !passed.has(passKey('ask', id)),
  );
  return next && { kind: 'ask', question: next.id, group: [next.id], purpose: { kind: 'closing' } };
}
