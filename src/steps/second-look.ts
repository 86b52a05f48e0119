import { combinedErrorRate, type Leaning, leaningOf } from '../answers/reliability.js';
import { isSilent } from '../findings/silent.js';
import { blur } from '../ranking/blur.js';
import type { FindingModel } from '../ranking/model.js';
import type { FindingId, PlaceId, Question, QuestionId } from '../rulebase/records.js';
import { questionOf } from './open-questions.js';
import type { Situation } from './situation.js';

/** One answer that was only said, and what it is worth to have it read back or looked at again. */
export interface SecondLook {
  readonly question: QuestionId;
  /** The finding through which most hangs on it. */
  readonly finding: FindingId;
  /** Expected minutes until the picture is back if it is checked now. */
  readonly expected: number;
}

/** Saying it again, and a look; common practice, no source. */
const LOOK_MINUTES = 0.5;
/** So many are weighed in full: the others hang on too little. */
const WEIGHED = 4;

interface Shaky {
  readonly question: Question;
  readonly finding: FindingId;
  /** By what the check shows: the answer stands, or the finding reads another value; P(shown | hypothesis, what is known). */
  readonly rows: readonly Float64Array[];
  readonly worth: number;
}

/**
 * The answer most worth checking, if any could be: much hangs on it, and it may be wrong. An answer is checked once.
 * `minutesOf`: expected minutes of what would be tried, by the weights of the hypotheses and the place.
 */
export function secondLook(
  situation: Situation,
  minutesOf: (weights: ArrayLike<number>, place: PlaceId) => number,
): SecondLook | undefined {
  const { probabilities, here } = situation;
  return shakyAnswers(situation)
    .sort((a, b) => b.worth - a.worth || (a.question.id < b.question.id ? -1 : 1))
    .slice(0, WEIGHED)
    .map(({ question, finding, rows }) => ({
      ...{ question: question.id, finding },
      expected: rows.reduce(
        (sum, row) =>
          sum +
          minutesOf(
            row.map((share, h) => share * (probabilities[h] ?? 0)),
            here,
          ),
        LOOK_MINUTES,
      ),
    }))
    .sort((a, b) => a.expected - b.expected)[0];
}

function shakyAnswers(situation: Situation): Shaky[] {
  const { rules, answers, settled, model, left, revised } = situation;
  return situation.evidence.flatMap(({ finding: id, value, errorRate }): Shaky[] => {
    const layout = model.findings.get(id);
    const finding = rules.findings.find((one) => one.id === id);
    const known = settled.findings.get(id);
    if (!layout || !finding || !known || isSilent(rules, settled, finding)) return [];
    return known.basis.flatMap((asked): Shaky[] => {
      const question = questionOf(rules, asked);
      const isShaky = answers.get(asked)?.origin === 'said' && !revised.has(asked);
      if (!question || !isShaky || left.has(`read-back:${asked}`)) return [];
      const rate = combinedErrorRate(leaningsWithout(situation, known.basis, asked));
      const own = 1 - (1 - errorRate) / (1 - rate);
      const rows = rowsIf(layout, layout.values.indexOf(value), { all: errorRate, rest: rate, own });
      return [{ question, finding: id, rows, worth: information(situation.probabilities, rows) }];
    });
  });
}

function leaningsWithout(
  { rules, answers }: Situation,
  basis: readonly QuestionId[],
  but: QuestionId,
): readonly Leaning[] {
  return basis.flatMap((id) => {
    const [question, answer] = [questionOf(rules, id), answers.get(id)];
    return id === but || !question || !answer
      ? []
      : [leaningOf(rules.manifest.reliability, question, answer, false)];
  });
}

/**
 * P(the answer stands | value heard, hypothesis) = (1 − own)·P″(v)/P′(v), with P″ blurred by the other answers only;
 * what is left is shared among the other values as the hypothesis shows them (Bayes' theorem).
 */
function rowsIf(
  { shares, values }: FindingModel,
  heard: number,
  rate: { readonly all: number; readonly rest: number; readonly own: number },
): readonly Float64Array[] {
  const many = values.length;
  const stands = Float64Array.from(shares[heard] ?? [], (share) =>
    Math.min(1, ((1 - rate.own) * blur(share, rate.rest, many)) / blur(share, rate.all, many)),
  );
  const others = shares.flatMap((row, v) =>
    v === heard
      ? []
      : [
          Float64Array.from(row, (share, h) => {
            const open = 1 - (shares[heard]?.[h] ?? 0);
            return (1 - (stands[h] ?? 0)) * (open > 0 ? share / open : 1 / (many - 1));
          }),
        ],
  );
  return [stands, ...others];
}

/** Mutual information of what the check shows and the hypotheses, in nats: what the checks are sorted by. */
function information(probabilities: readonly number[], rows: readonly Float64Array[]): number {
  let total = 0;
  for (const row of rows) {
    let chance = 0;
    let within = 0;
    for (let h = 0; h < row.length; h++) {
      const share = row[h] ?? 0;
      chance += share * (probabilities[h] ?? 0);
      if (share > 0) within += (probabilities[h] ?? 0) * share * Math.log(share);
    }
    if (chance > 0) total += within - chance * Math.log(chance);
  }
  return total;
}
