import { parseAnswer } from '../answers/parse-answer.js';
import { say } from '../messages/say.js';
import type { RuleBase } from '../rulebase/records.js';
import { answerInWords } from './answer-words.js';
import type { PastedAnswer } from './events.js';

/** The answers that a text filled in, each with its line, for somebody to read before the call goes on. */
export function filledLines(rules: RuleBase, answers: readonly PastedAnswer[]): readonly string[] {
  if (answers.length === 0) return [say('paste.filled-none')];
  const filled = answers.flatMap(({ question: id, answer, line }) => {
    const question = rules.questions.find((one) => one.id === id);
    const parsed = question && parseAnswer(question, answer);
    return question && parsed?.ok
      ? [
          say('paste.filled-one', {
            title: question.title,
            answer: answerInWords(question, parsed.value),
            line,
          }),
        ]
      : [];
  });
  return [say('paste.filled'), ...filled.map((line) => `  ${line}`)];
}
