import type { RawAnswer } from '../answers/answer.js';
import { answerInWords } from './answer-words.js';
import type { Call } from './call.js';
import type { CallEvent } from './events.js';

/** An event without its time. */
export type Happening = CallEvent extends infer E ? (E extends CallEvent ? Omit<E, 'at'> : never) : never;

/** What a person chose or typed at a step. */
export type Said =
  | { readonly kind: 'one'; readonly id: string }
  | { readonly kind: 'several'; readonly ids: readonly string[] }
  | { readonly kind: 'text'; readonly text: string };

/** What follows: an event; or first a question put again, or the check of a remedy. */
export type Outcome =
  | { readonly kind: 'event'; readonly event: Happening }
  | { readonly kind: 'change'; readonly question: string }
  | { readonly kind: 'check'; readonly remedy: string };

/** What follows from a reply to the present step. */
export function outcomeOf({ step }: Call, said: Said): Outcome {
  const id = said.kind === 'one' ? said.id : '';
  switch (step.kind) {
    case 'ask':
      return event(answered(step.question, rawOf(said)));
    case 'read-back':
      if (id === 'agrees') return event({ type: 'agreed', question: step.question });
      if (id === 'leave') return event({ type: 'kept', contradiction: `read-back:${step.question}` });
      return { kind: 'change', question: step.question };
    case 'check-answers':
      return id === 'keep'
        ? event({ type: 'kept', contradiction: step.conflict.id })
        : { kind: 'change', question: id.replace('change:', '') };
    case 'spoilt-check':
      return event({
        type: 'tester-dealt',
        fault: step.fault,
        outcome: id === 'left' ? 'left' : 'put-right',
      });
    case 'try':
      if (id === 'not-now') return event({ type: 'passed-over', step: `try:${step.remedy}` });
      if (id === 'back') return event({ type: 'tried', remedy: step.remedy, took: 'yes', picture: 'yes' });
      return { kind: 'check', remedy: step.remedy };
    case 'visit':
      return event({ type: 'closed', how: 'visit' });
    case 'end':
      return event({ type: 'closed', how: step.how === 'picture-back' ? 'picture-back' : 'out-of-scope' });
  }
}

/** An answer that somebody gave; `null` is *can't tell*. */
export function answered(question: string, answer: RawAnswer): Happening {
  return { type: 'answered', question, answer, origin: 'said' };
}

/** A reply as the answer to a question. */
export function rawOf(said: Said): string | readonly string[] {
  return said.kind === 'one' ? said.id : said.kind === 'several' ? said.ids : said.text;
}

/** A remedy that did not bring the picture back, with what came of its check. */
export function stillDark(remedy: string, took: string): Happening {
  return { type: 'tried', remedy, took: took === 'yes' || took === 'no' ? took : 'cant-tell', picture: 'no' };
}

/** The answers that hold and can be changed, the last given first, each in words. */
export function changeable({ state, rules }: Call): readonly {
  readonly id: string;
  readonly title: string;
  readonly answer: string;
}[] {
  return state.history
    .filter(({ question }, at, all) => all.findLastIndex((other) => other.question === question) === at)
    .flatMap(({ question: id }) => {
      const question = rules.questions.find((one) => one.id === id);
      const now = state.answers.get(id);
      return question && now
        ? [{ id, title: question.title, answer: answerInWords(question, now.value) }]
        : [];
    })
    .reverse();
}

const TWO_ADDRESSES = /\d(?:\.\d{1,3}){3}[^\d.][\s\S]{0,200}?\d(?:\.\d{1,3}){3}/;

/** Whether a line holds several addresses where one was asked for: a page that somebody typed off. */
export function holdsMore({ step, rules }: Call, text: string): boolean {
  const question = step.kind === 'ask' ? rules.questions.find(({ id }) => id === step.question) : undefined;
  const isAddress = question?.answer.type === 'address' || question?.answer.type === 'mask';
  return isAddress && TWO_ADDRESSES.test(text);
}

function event(happening: Happening): Outcome {
  return { kind: 'event', event: happening };
}
