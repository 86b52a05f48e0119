import { parseAnswer } from '../answers/parse-answer.js';
import { inWords } from '../messages/say.js';
import type { QuestionId } from '../rulebase/records.js';
import type { Call } from './call.js';

/** What is wrong with this text as an answer to the question, in words; nothing where it fits. */
export function misfitOf({ rules }: Call, id: QuestionId, text: string): string | undefined {
  const question = rules.questions.find((one) => one.id === id);
  const parsed = question && parseAnswer(question, text);
  return parsed && !parsed.ok ? inWords(parsed.problem) : undefined;
}
