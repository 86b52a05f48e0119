import { say } from '../../messages/say.js';
import type { QuestionId } from '../../rulebase/records.js';
import { blocks, bullets, section, subsection, table, withList } from '../markdown.js';
import type { Pen } from '../pen.js';
import type { Asked, TicketInput } from '../ticket-input.js';

/** What was asked and answered, the checks that say nothing, and the answers that contradict each other. */
export function askedSections(input: TicketInput, pen: Pen): string {
  const superseded = answers(
    input.asked.filter((one) => one.superseded),
    pen,
  );
  return blocks(
    section(
      say('ticket.asked'),
      answers(
        input.asked.filter((one) => !one.superseded),
        pen,
      ),
      superseded === ''
        ? ''
        : subsection(say('ticket.superseded'), say('ticket.superseded-means'), superseded),
    ),
    section(say('ticket.spoilt'), spoilt(input, pen)),
    section(say('ticket.conflicts'), conflicts(input, pen)),
  );
}

function answers(asked: readonly Asked[], pen: Pen): string {
  const rows = asked.map(({ title, answer, origin, line }) => [
    pen.ours(title),
    pen.typed(answer, title),
    line === undefined
      ? say(`ticket.origin-${origin}`)
      : say('ticket.origin-line', { origin: say(`ticket.origin-${origin}`), line }),
  ]);
  return table([say('ticket.question'), say('ticket.answer'), say('ticket.origin')], rows);
}

function spoilt({ diagnosis }: TicketInput, pen: Pen): string {
  return bullets(
    diagnosis.spoilt.map(({ title, help }) => withList(pen.ours(title), bullets(help.map(pen.ours)))),
  );
}

function conflicts({ diagnosis, asked }: TicketInput, pen: Pen): string {
  const titleOf = (id: QuestionId): string => asked.find(({ question }) => question === id)?.title ?? id;
  return bullets(
    diagnosis.conflicts.map(({ says, between }) =>
      withList(pen.ours(says), bullets(between.map((id) => pen.ours(titleOf(id))))),
    ),
  );
}
