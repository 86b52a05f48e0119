import { say } from '../../messages/say.js';
import { blocks } from '../markdown.js';
import type { Pen } from '../pen.js';
import type { TicketInput } from '../ticket-input.js';

/** So much of a digest tells two rule bases apart. */
const DIGITS_OF_DIGEST = 12;

/** What is hidden, and what the ticket was made with. Its own ids are never masked. */
export function foot(input: TicketInput, pen: Pen, options: { readonly unmasked: boolean }): string {
  const { version, digest } = input.diagnosis.rules;
  return blocks(
    say(options.unmasked ? 'ticket.unmasked' : 'ticket.masked'),
    say('ticket.foot', {
      whydark: pen.ours(input.whydark),
      rules: pen.ours(version),
      digest: pen.ours(digest.slice(0, DIGITS_OF_DIGEST)),
      call: pen.ours(input.call),
    }),
  );
}
