import type { Finding } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { minutesFor, questionsFor, unknownFindings } from './open-findings.js';
import type { Action, Policy } from './policy.js';
import { leaderOf, pointsAtLeader } from './suspicion.js';
import { cheapestFor, least, tryOrGate } from './tries.js';

/**
 * A list from the power upward: whatever is not proven good stage by stage, the quickest first. As soon as
 * something points at the leading cause, its remedies; then on with the list. At its end the leading cause's
 * remedies once more, then a visit. It ranks with our own numbers, which flatters it.
 */
export const bottomUp: Policy = (situation, asked) => {
  const remedy = (): Action | undefined => {
    const open = cheapestFor(situation, leaderOf(situation));
    return open && tryOrGate(open);
  };
  const pointed = pointsAtLeader(situation) ? remedy() : undefined;
  return pointed ?? nextOnList(situation, asked) ?? remedy() ?? { kind: 'visit' };
};

function nextOnList(situation: Situation, asked: ReadonlySet<string>): Action | undefined {
  const cleared = clearedStages(situation);
  const unknown = unknownFindings(situation);
  for (const { id } of situation.rules.manifest.stages) {
    if (cleared.has(id)) continue;
    const open = unknown
      .filter(({ stage }) => stage === id)
      .flatMap((finding) => {
        const questions = questionsFor(situation, finding)?.filter((one) => !asked.has(one.id)) ?? [];
        return questions.length > 0 ? [questions] : [];
      });
    const question = least(open, (questions) => minutesFor(situation, questions))?.[0];
    if (question) return { kind: 'ask', question: question.id };
  }
  return undefined;
}

/** Stages that something known proves good. */
function clearedStages({ rules, evidence }: Situation): ReadonlySet<string> {
  const byId = new Map(rules.findings.map((one): [string, Finding] => [one.id, one]));
  return new Set(evidence.flatMap(({ finding, value }) => byId.get(finding)?.values[value]?.clears ?? []));
}
