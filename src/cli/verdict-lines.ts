import { type Call, diagnosisOf } from '../call/call.js';
import { screenOf } from '../call/screen.js';
import { percent } from '../call/why-lines.js';
import { say } from '../messages/say.js';

/** Verdict, defects and next step as a few lines of plain text. */
export function verdictLines(call: Call): string {
  const { verdict, defects, ranked, plan } = diagnosisOf(call);
  const { heading, say: words } = screenOf(call);
  const confidence = say('cli.confidence', {
    word: say(`cli.confidence.${verdict.confidence}`),
    probability: percent(verdict.probability),
  });
  return [
    say('cli.verdict', { says: verdict.says }),
    ...(ranked.length > 0 ? [confidence] : []),
    ...defects.flatMap(({ grade, says, lines }) => [
      say('cli.defect', { grade: say(`cli.defect.${grade}`), says }),
      ...lines.map((line) => `  ${line}`),
    ]),
    ...ranked.map(({ title, probability }) =>
      say('cli.ranking-line', { probability: percent(probability), title }),
    ),
    say('cli.next', { step: heading }),
    ...words.map((line) => `  ${line}`),
    ...plan.map(({ title, who, where, minutes }, at) =>
      say('cli.planned', { number: at + 1, title, who, where, minutes }),
    ),
  ].join('\n');
}
