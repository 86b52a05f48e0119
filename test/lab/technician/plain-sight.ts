import type { AskedQuestion } from '../types.js';
import { type Answer, CANT_TELL, value } from './eye.js';

/** What the scene says of a question, in the shape that the question takes; throws where it names no choice of it. */
export function plainAnswer(question: AskedQuestion, given: string | boolean): Answer {
  if (given === 'cant-tell') return CANT_TELL;
  const { type, choices = [] } = question.answer;
  const known = (id: string): string => {
    if (choices.some((choice) => choice.id === id)) return id;
    throw new Error(`the scene answers ${question.id} with ${id}, which is none of its choices`);
  };
  if (type === 'yes-no') {
    if (typeof given === 'boolean') return value(given);
    if (given === 'yes' || given === 'no') return value(given === 'yes');
    throw new Error(`the scene answers ${question.id} with ${given}, not with yes or no`);
  }
  if (typeof given === 'boolean') throw new Error(`the scene answers ${question.id} with yes or no`);
  if (type === 'choice') return value(known(given));
  if (type === 'several') return value(given.split(',').map((word) => known(word.trim())));
  if (type !== 'number') return value(given);
  if (given.trim() === '' || !Number.isFinite(Number(given)))
    throw new Error(`the scene answers ${question.id} with ${given}, which is no number`);
  return value(Number(given));
}
