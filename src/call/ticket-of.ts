import { sumsOf } from '../diagnosis/plan.js';
import { writeTicket } from '../ticket/ticket.js';
import type { TicketInput } from '../ticket/ticket-input.js';
import { answerInWords } from './answer-words.js';
import { type Call, diagnosisOf } from './call.js';

/** The ticket of a call as it stands. Masked unless asked for otherwise. */
export function ticketOf(call: Call, options: { readonly unmasked: boolean } = { unmasked: false }): string {
  return writeTicket(ticketInput(call), options);
}

function ticketInput(call: Call): TicketInput {
  const { header, events } = call.state;
  const closed = events.find(({ type }) => type === 'closed')?.at;
  return {
    call: header.id,
    opened: header.opened,
    ...(closed === undefined ? {} : { closed }),
    whydark: header.whydark,
    role: header.role,
    diagnosis: diagnosisOf(call),
    head: headOf(call),
    asked: askedOf(call),
    tried: call.state.trials.map(({ remedy: id, took, picture, wasThere }) => {
      const remedy = call.rules.remedies.find((one) => one.id === id);
      return {
        remedy: id,
        title: remedy?.title ?? id,
        took,
        picture: wasThere === true && picture === 'yes' ? 'there' : picture,
        leaves: remedy?.leaves ?? '',
        sums: remedy ? sumsOf(call.situation, remedy) : [],
        undo: remedy?.undo ?? '',
      };
    }),
    notes: call.state.notes,
  };
}

function headOf({ rules, state }: Call): TicketInput['head'] {
  return rules.questions.flatMap((question) => {
    const answer = state.answers.get(question.id);
    const { part } = question;
    if (!answer || part === undefined || part === 'kit' || answer.value.kind === 'cant-tell') return [];
    return [{ part, title: question.title, text: answerInWords(question, answer.value) }];
  });
}

/** Every answer given, in order; one that a remedy or a correction set aside comes as superseded. */
function askedOf({ rules, state }: Call): TicketInput['asked'] {
  return state.history.flatMap((given, at) => {
    const question = rules.questions.find(({ id }) => id === given.question);
    if (!question || (question.part !== undefined && question.part !== 'kit')) return [];
    const later = state.history.slice(at + 1).some((other) => other.question === given.question);
    const now = later ? undefined : state.answers.get(question.id);
    return [
      {
        question: question.id,
        title: question.title,
        answer: answerInWords(question, given.value),
        origin: (now ?? given).origin,
        ...(given.line === undefined ? {} : { line: given.line }),
        superseded: now === undefined,
      },
    ];
  });
}
