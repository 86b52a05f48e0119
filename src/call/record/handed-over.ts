import { parseAnswer } from '../../answers/parse-answer.js';
import type { Question, RuleBase } from '../../rulebase/records.js';
import { clean } from '../../ticket/clean.js';
import { mask } from '../../ticket/mask.js';
import type { Call } from '../call.js';
import type { CallEvent, PastedAnswer, RawAnswer } from '../events.js';
import { recordTextOf } from './read-record.js';

/** A record to pass on, and what it contains. */
export interface HandedOver {
  /** JSON lines, as every record. What was taken back is not in it. */
  readonly text: string;
  readonly answers: number;
  readonly notes: number;
  /** Pasted texts, and those read from a computer. */
  readonly texts: number;
  readonly tried: number;
  /** Answers that are nothing but what is hidden: they go as *can't tell*. */
  readonly untold: number;
}

type Answered = Extract<CallEvent, { type: 'answered' }>;

/**
 * The record of a call to pass on, what the ticket masks hidden in it unless asked for otherwise. It can be gone on
 * with: an answer that masking would make unreadable goes as *can't tell*.
 */
export function handedOver({ rules, state }: Call, { unmasked }: { readonly unmasked: boolean }): HandedOver {
  const events = unmasked ? state.events : state.events.map((event) => maskedEvent(rules, event));
  const count = (type: CallEvent['type']): number => events.filter((event) => event.type === type).length;
  return {
    text: recordTextOf(state.header, events),
    answers: count('answered') + events.reduce((sum, event) => sum + pastedIn(event), 0),
    notes: count('noted'),
    texts: count('pasted'),
    tried: count('tried'),
    untold: state.events.reduce((sum, event, at) => sum + untoldIn(event, events[at]), 0),
  };
}

function maskedEvent(rules: RuleBase, event: CallEvent): CallEvent {
  switch (event.type) {
    case 'answered':
      return { ...event, answer: maskedAnswer(rules, event) };
    case 'pasted':
      return {
        ...event,
        text: byLine(event.text),
        answers: event.answers.flatMap((one) => stillTold(rules, one)),
        ...(event.note === undefined ? {} : { note: mask(event.note) }),
      };
    case 'noted':
      return { ...event, text: maskedText(event.text) };
    default:
      return event;
  }
}

function maskedAnswer(
  rules: RuleBase,
  { question: id, answer }: Pick<Answered, 'question' | 'answer'>,
): RawAnswer {
  const question = rules.questions.find((one) => one.id === id);
  if (!question || typeof answer !== 'string' || 'choices' in question.answer) return answer;
  const masked = maskedText(answer, question.title);
  if (masked === clean(answer)) return answer;
  return fits(question, masked) ? masked : null;
}

function fits(question: Question, answer: string): boolean {
  return question.answer.type === 'text' && parseAnswer(question, answer).ok;
}

function stillTold(rules: RuleBase, one: PastedAnswer): readonly PastedAnswer[] {
  const answer = maskedAnswer(rules, one);
  return answer === null && one.answer !== null ? [] : [{ ...one, answer }];
}

/** As the ticket has it: on one line, and masked. */
function maskedText(text: string, about = ''): string {
  return mask(clean(text), about);
}

/** The lines of a pasted text stay where they are: answers point at them. */
function byLine(text: string): string {
  return text.replace(/[^\r\n\u2028\u2029]+/g, (line) => mask(line));
}

function pastedIn(event: CallEvent): number {
  return event.type === 'pasted' ? event.answers.length : 0;
}

function untoldIn(was: CallEvent, now: CallEvent | undefined): number {
  if (was.type === 'pasted' && now?.type === 'pasted') return was.answers.length - now.answers.length;
  return was.type === 'answered' && now?.type === 'answered' && was.answer !== null && now.answer === null
    ? 1
    : 0;
}
