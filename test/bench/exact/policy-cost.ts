import type { Answer } from '../../../src/answers/answer.js';
import type { Known } from '../../../src/findings/settle.js';
import type { PlaceId, QuestionId, RuleBase } from '../../../src/rulebase/records.js';
import { nextStep } from '../../../src/steps/next-step.js';
import type { Situation } from '../../../src/steps/situation.js';
import { placeAfter, visitMinutes, wayMinutes } from '../../../src/steps/ways.js';
import { afterTry, afterValue, exactModelOf, massOf } from './exact-model.js';

/** How far a call has come: the value each question gave, what was tried, where the person is. */
interface Reached {
  readonly told: ReadonlyMap<QuestionId, string>;
  readonly tried: ReadonlySet<string>;
  readonly here: PlaceId;
  readonly weights: readonly number[];
}

/**
 * The expected minutes until the picture is back if every step is the one that `nextStep` gives, exactly: by
 * recursion over all that each step can bring. With `planned`, the steps are chosen on that rule base (one without
 * ways, say) and charged by the own one.
 */
export function policyCost(start: Situation, planned: RuleBase = start.rules): number {
  const { priors, questions, remedies, manifest } = exactModelOf(start);
  const findings = new Map(questions.map(({ id, finding }) => [id, finding]));
  const visit = visitMinutes(manifest);
  const known = new Map<string, number>();

  const from = (reached: Reached): number => {
    const { told, tried, here, weights } = reached;
    if (massOf(weights) === 0) return 0;
    const key = `${[...told].sort().join(' ')} / ${[...tried].sort().join(' ')} / ${here}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const minutes = after(reached);
    known.set(key, minutes);
    return minutes;
  };

  const after = ({ told, tried, here, weights }: Reached): number => {
    const mass = massOf(weights);
    const step = nextStep(situationOf(start, planned, { told, tried, here, weights }, findings));
    if (step.kind === 'visit') return mass * visit;
    if (step.kind === 'ask') {
      const question = questions.find(({ id }) => id === step.question);
      if (!question || told.has(question.id)) throw new Error(`"${step.question}" can't be asked now`);
      const place = placeAfter(manifest, here, question.place);
      return question.values.reduce(
        (minutes, value, v) =>
          minutes +
          from({
            told: new Map(told).set(question.id, value),
            tried,
            here: place,
            weights: afterValue(weights, question.rows[v] ?? []),
          }),
        mass * (question.minutes + wayMinutes(manifest, here, question.place)),
      );
    }
    const remedy = step.kind === 'try' ? remedies.find(({ id }) => id === step.remedy) : undefined;
    if (!remedy || tried.has(remedy.id)) throw new Error(`a step of kind "${step.kind}" has no place here`);
    return (
      mass * (remedy.minutes + wayMinutes(manifest, here, remedy.place)) +
      from({
        told,
        tried: new Set(tried).add(remedy.id),
        here: placeAfter(manifest, here, remedy.place),
        weights: afterTry(weights, remedy),
      })
    );
  };

  return from({ told: new Map(), tried: new Set(), here: start.here, weights: priors }) / massOf(priors);
}

function situationOf(
  start: Situation,
  rules: RuleBase,
  { told, tried, here, weights }: Reached,
  findings: ReadonlyMap<QuestionId, string>,
): Situation {
  const settled = new Map<string, Known>();
  const answers = new Map<QuestionId, Answer>();
  for (const [question, value] of told) {
    const finding = findings.get(question) ?? question;
    settled.set(finding, { finding, value, basis: [question], errorRate: 0 });
    answers.set(question, { question, value: { kind: 'choice', id: value }, origin: 'said' });
  }
  const mass = massOf(weights);
  return {
    ...start,
    rules,
    answers,
    settled: { facts: new Map(), findings: settled, testerFaults: [] },
    evidence: [...settled.values()],
    probabilities: weights.map((weight) => weight / mass),
    here,
    tried,
    askedBefore: new Set(told.keys()),
    revised: new Set(),
  };
}
