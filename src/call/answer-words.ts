import type { AnswerValue } from '../answers/answer.js';
import { say } from '../messages/say.js';
import type { Question } from '../rulebase/records.js';
import { showAddress } from '../values/address.js';
import { showMask } from '../values/mask.js';
import { showRead } from '../values/moment.js';

/** An answer in the words that a person reads. */
export function answerInWords(question: Question, value: AnswerValue): string {
  switch (value.kind) {
    case 'cant-tell':
      return say('call.cant-tell');
    case 'yes-no':
      return say(value.yes ? 'call.yes' : 'call.no');
    case 'choice':
      return titleOf(question, value.id);
    case 'several':
      return value.ids.length === 0
        ? say('call.none-of-these')
        : value.ids.map((id) => titleOf(question, id)).join(', ');
    case 'address':
      return showAddress(value.address);
    case 'mask':
      return showMask(value.mask);
    case 'moment':
      return showRead(value.moment);
    case 'number':
      return 'unit' in question.answer
        ? say('call.number', { number: value.number, unit: question.answer.unit })
        : String(value.number);
    case 'text':
      return value.text;
  }
}

function titleOf(question: Question, id: string): string {
  const choices = 'choices' in question.answer ? question.answer.choices : [];
  return choices.find((choice) => choice.id === id)?.title ?? id;
}
