import { holds } from '../findings/holds.js';
import { mentions } from '../rulebase/mentions.js';
import type { Question, Remedy } from '../rulebase/records.js';
import { canDo, couldHold, groupFor, questionsBehind } from './open-questions.js';
import type { Try } from './repair-plan.js';
import { passKey, type Situation } from './situation.js';

/** A remedy that may be tried, once its gate questions (often none) are answered. */
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
  const words = situation.rules.manifest.words;
  return situation.rules.remedies.flatMap((remedy) => {
    const gate = gateQuestions(situation, remedy);
    if (!gate) return [];
    const mends = remedy.mends.flatMap(({ cause, chance }): (readonly [number, number])[] => {
      const place = places.get(cause);
      return place === undefined ? [] : [[place, words[chance] ?? 0]];
    });
    const minutes = gate.reduce((sum, question) => sum + question.minutes, remedy.minutes);
    return [{ remedy, gate, attempt: { remedy: remedy.id, place: remedy.place, minutes, mends } }];
  });
}

/**
 * The questions that decide whether it may be tried: those behind its gate, and behind the condition under which
 * it makes sense. `undefined` where it may not: a condition is false, or stays unknown whatever is asked.
 */
function gateQuestions(situation: Situation, remedy: Remedy): readonly Question[] | undefined {
  const { settled, passed, tried, rules, answers } = situation;
  if (tried.has(remedy.id) || passed.has(passKey('try', remedy.id)) || !canDo(situation, remedy))
    return undefined;
  const conditions = [remedy.when, remedy.gate?.condition].filter((one) => one !== undefined);
  const held = conditions.map((condition) => holds(condition, settled.facts));
  if (held.includes(false) || !conditions.every((condition) => couldHold(situation, condition)))
    return undefined;
  if (!held.includes(undefined)) return [];
  const first = conditions
    .filter((_, at) => held[at] === undefined)
    .flatMap(mentions)
    .filter((fact) => !settled.facts.has(fact))
    .flatMap((fact) => questionsBehind(rules, fact))
    .filter((id) => !answers.has(id));
  const group = groupFor(situation, first);
  return group && group.length > 0 ? group : undefined;
}
