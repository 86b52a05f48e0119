import type { RawAnswer } from '../../src/answers/answer.js';
import { diceOf } from '../../src/call/rehearsal/dice.js';
import { tellable } from '../../src/call/rehearsal/tellable.js';
import type { RuleBase } from '../../src/rulebase/records.js';

type Answers = Readonly<Record<string, RawAnswer>>;

/** The same answers with a third of them missing and one of the others wrong; the same for the same seed. */
export function damaged(rules: RuleBase, answers: Answers, seed: number): Answers {
  const dice = diceOf(seed);
  const told = Object.keys(answers)
    .filter((id) => answers[id] !== null)
    .map((id) => ({ id, at: dice.number() }))
    .sort((a, b) => a.at - b.at)
    .map(({ id }) => id);
  const missing = new Set(told.slice(0, Math.round(told.length / 3)));
  const kept = told.filter((id) => !missing.has(id));
  const after = new Map(kept.map((id): [string, RawAnswer] => [id, answers[id] ?? null]));
  for (const id of kept) {
    const question = rules.questions.find((one) => one.id === id);
    if (!question || question.answer.type === 'text') continue;
    const { answer } = question;
    const others = tellable(rules, question)
      .filter((one) => JSON.stringify(one) !== JSON.stringify(answers[id]))
      // An answer that ends the call is no slip: nobody calls a recorder a camera by mistake.
      .filter(
        (one) => !('choices' in answer && answer.choices.some((c) => c.id === one && c.ends !== undefined)),
      );
    const wrong = dice.oneOf(others);
    if (wrong === undefined) continue;
    after.set(id, wrong);
    break;
  }
  return Object.fromEntries(after);
}
