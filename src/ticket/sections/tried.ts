import { say } from '../../messages/say.js';
import { blocks, bullets, numbered, section, withList } from '../markdown.js';
import type { Pen } from '../pen.js';
import type { TicketInput, Tried } from '../ticket-input.js';

/** What was tried and the state it left things in, then the notes that were taken. */
export function triedSections({ tried, notes }: TicketInput, pen: Pen): string {
  return blocks(
    section(say('ticket.tried'), numbered(tried.map((one) => trial(one, pen)))),
    section(say('ticket.notes'), bullets(notes.map((note) => pen.typed(note)).filter((note) => note !== ''))),
  );
}

function trial({ title, took, picture, leaves, sums, undo }: Tried, pen: Pen): string {
  return withList(
    pen.ours(title),
    bullets([
      say(`ticket.took-${took}`),
      say(`ticket.picture-${picture}`),
      ...(leaves === '' ? [] : [say('ticket.leaves', { leaves: pen.ours(leaves) })]),
      ...(sums.length === 0
        ? []
        : [withList(say('ticket.tried-sums'), bullets(sums.map((line) => pen.typed(line))))]),
      ...(undo === '' ? [] : [say('ticket.undo', { undo: pen.ours(undo) })]),
    ]),
  );
}
