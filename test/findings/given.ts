import type { Answer, Answers, Origin, RawAnswer } from '../../src/answers/answer.js';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import type { Fact, Facts } from '../../src/findings/fact.js';
import { inWords } from '../../src/messages/say.js';
import type { RuleBase } from '../../src/rulebase/records.js';

/** Facts without a sum behind them. */
export function facts(values: Readonly<Record<string, Fact['value']>>): Facts {
  return new Map(
    Object.entries(values).map(([id, value]) => [id, { value, lines: [], basis: [`ask-${id}`] }]),
  );
}

/** Answers as they stand in a record; a test that writes a wrong one stops here. */
export function answered(
  rules: RuleBase,
  raw: Readonly<Record<string, RawAnswer>>,
  origin: Origin = 'said',
): Answers {
  return new Map(
    Object.entries(raw).map(([id, one]): [string, Answer] => {
      const question = rules.questions.find((each) => each.id === id);
      if (question === undefined) throw new Error(`no question ${id}`);
      const parsed = parseAnswer(question, one);
      if (!parsed.ok) throw new Error(inWords(parsed.problem));
      return [id, { question: id, value: parsed.value, origin }];
    }),
  );
}
