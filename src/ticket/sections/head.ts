import { say } from '../../messages/say.js';
import { time } from '../figures.js';
import { blocks, bullets, section } from '../markdown.js';
import type { Pen } from '../pen.js';
import type { TicketInput } from '../ticket-input.js';

type Part = TicketInput['head'][number]['part'];

/** The verdict in one line, at whose hands and when, which camera, what was seen and since when. */
export function headSections(input: TicketInput, pen: Pen): string {
  return blocks(
    `# ${pen.typed(input.diagnosis.verdict.says)}`,
    callLine(input, pen),
    section(say('ticket.camera'), partsOf(input, pen, ['camera', 'where'])),
    section(say('ticket.seen'), partsOf(input, pen, ['words', 'since'])),
  );
}

/** What was promised to the owner. */
export function promisedSection(input: TicketInput, pen: Pen): string {
  return section(say('ticket.promised'), partsOf(input, pen, ['promised']));
}

function callLine({ role, opened, closed }: TicketInput, pen: Pen): string {
  const at = { opened: time(opened) ?? pen.ours(opened) };
  if (closed === undefined) return say(`ticket.call-${role}-open`, at);
  return say(`ticket.call-${role}-closed`, { ...at, closed: time(closed) ?? pen.ours(closed) });
}

function partsOf({ head }: TicketInput, pen: Pen, parts: readonly Part[]): string {
  const lines = parts.flatMap((part) => head.filter((line) => line.part === part));
  return bullets(
    lines.map(({ title, text }) =>
      say('ticket.line', { title: pen.ours(title), text: pen.typed(text, title) }),
    ),
  );
}
