import type { Answers, AnswerValue } from '../answers/answer.js';
import type { FactRecord, Question, QuestionId } from '../rulebase/records.js';
import { showAddress } from '../values/address.js';
import { showMask } from '../values/mask.js';
import { showInUtc } from '../values/moment.js';
import type { Fact } from './fact.js';
import { workTopic } from './sums.js';

/** What a topic reads as an input that nobody could tell: it then reckons with the usual range. */
const NOT_KNOWN = "don't know";

/**
 * A fact that a topic of sums gives, once all its questions were put. What nobody could tell is given to the topic
 * as not known, so that it reckons over a range. `undefined` while a question is open, or where nothing was told.
 */
export function topicFact(
  record: FactRecord,
  answers: Answers,
  questions: ReadonlyMap<QuestionId, Question>,
): Fact | undefined {
  const given: Record<string, string> = { ...record.given };
  const basis: QuestionId[] = [];
  for (const id of record.inputs) {
    const answer = answers.get(id);
    const input = record.as?.[id];
    if (!answer || input === undefined) return undefined;
    given[input] = asTyped(answer.value, questions.get(id));
    if (answer.value.kind !== 'cant-tell') basis.push(id);
  }
  if (basis.length === 0) return undefined;
  const worked = workTopic(record.sum, given, record.field);
  if (!worked) return undefined;
  const estimate = record.estimate ? { estimate: true } : {};
  return { value: worked.value, lines: worked.lines, basis: basis.sort(), ...estimate };
}

function asTyped(value: AnswerValue, question: Question | undefined): string {
  switch (value.kind) {
    case 'cant-tell':
      return NOT_KNOWN;
    case 'choice':
      return value.id;
    case 'yes-no':
      return value.yes ? 'yes' : 'no';
    case 'several':
      return value.ids.join(', ');
    case 'address':
      return showAddress(value.address);
    case 'mask':
      return showMask(value.mask);
    case 'moment':
      return showInUtc(value.moment);
    case 'text':
      return value.text;
    case 'number': {
      const unit = question && 'unit' in question.answer ? question.answer.unit : '';
      return `${value.number} ${unit}`.trim();
    }
  }
}
