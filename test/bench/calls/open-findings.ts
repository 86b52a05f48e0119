import { isCantTell } from '../../../src/answers/answer.js';
import { isSilent } from '../../../src/findings/silent.js';
import type { Finding, Question } from '../../../src/rulebase/records.js';
import { groupFor } from '../../../src/steps/open-questions.js';
import type { Situation } from '../../../src/steps/situation.js';
import { placeAfter, wayMinutes } from '../../../src/steps/ways.js';

/** Findings that nobody knows yet and that would say something if they were known. */
export function unknownFindings({ rules, model, settled, evidence }: Situation): readonly Finding[] {
  const counted = new Set(evidence.map(({ finding }) => model.findings.get(finding)?.group));
  return rules.findings.filter(
    (finding) =>
      !settled.findings.has(finding.id) &&
      !counted.has(model.findings.get(finding.id)?.group) &&
      !isSilent(rules, settled, finding),
  );
}

/** The questions that would settle a finding, in order; `undefined` where nothing that can be asked would. */
export function questionsFor(situation: Situation, finding: Finding): readonly Question[] | undefined {
  const { answers } = situation;
  const wanted = finding.withGaps ? finding.asks.filter((id) => !isCantTell(answers.get(id))) : finding.asks;
  const questions = groupFor(situation, wanted);
  return questions?.length === 0 ? undefined : questions;
}

/** Minutes of these questions one after the other, ways from here included. */
export function minutesFor({ here, rules }: Situation, questions: readonly Question[]): number {
  let [minutes, place] = [0, here];
  for (const question of questions) {
    minutes += question.minutes + wayMinutes(rules.manifest, place, question.place);
    place = placeAfter(rules.manifest, place, question.place);
  }
  return minutes;
}
