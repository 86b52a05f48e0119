import type { Question, Remedy } from '../rulebase/records.js';
import { canDo, groupFor, groupToDecide } from './open-questions.js';
import type { Try } from './repair-plan.js';
import { passKey, type Situation } from './situation.js';

/** A remedy that may be tried, once the questions before it (often none) are answered. */
export interface OpenRemedy {
  readonly remedy: Remedy;
  readonly gate: readonly Question[];
  readonly attempt: Try;
}

/**
 * The remedies that may be proposed now. One whose gate is shut is not among them, whatever it would save;
 * one whose gate nobody has asked about carries the questions, and their minutes.
 */
export function openRemedies(situation: Situation): readonly OpenRemedy[] {
  const places = new Map(situation.model.hypotheses.map(({ id }, index) => [id, index]));
  const { words, tryPrice = 0 } = situation.rules.manifest;
  return situation.rules.remedies.flatMap((remedy) => {
    const gate = gateQuestions(situation, remedy);
    if (!gate) return [];
    const mends = remedy.mends.flatMap(({ cause, chance }): (readonly [number, number])[] => {
      const place = places.get(cause);
      return place === undefined ? [] : [[place, words[chance] ?? 0]];
    });
    const minutes = gate.reduce((sum, question) => sum + question.minutes, remedy.minutes + tryPrice);
    const attempt = { remedy: remedy.id, place: remedy.place, minutes, mends };
    return [{ remedy, gate: [...new Set([...askedBefore(situation, remedy), ...gate])], attempt }];
  });
}

/**
 * The questions that decide whether it may be tried: those behind its gate, and behind the condition under which
 * it makes sense. `undefined` where it may not: a condition is false, or stays unknown whatever is asked.
 */
function gateQuestions(situation: Situation, remedy: Remedy): readonly Question[] | undefined {
  const { passed, tried } = situation;
  if (tried.has(remedy.id) || passed.has(passKey('try', remedy.id)) || !canDo(situation, remedy))
    return undefined;
  const conditions = [remedy.when, remedy.gate?.condition].filter((one) => one !== undefined);
  return groupToDecide(situation, conditions);
}

/** What is looked at first, as far as it can be told. Its minutes are no price of the try: they are paid for by what they tell. */
export function askedBefore(situation: Situation, { askBefore = [] }: Remedy): readonly Question[] {
  return [...new Set(askBefore.flatMap((id) => groupFor(situation, [id]) ?? []))];
}
