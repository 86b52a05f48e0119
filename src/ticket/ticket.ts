import { blocks } from './markdown.js';
import { makePen } from './pen.js';
import { askedSections } from './sections/asked.js';
import { causeSections } from './sections/causes.js';
import { foot } from './sections/foot.js';
import { headSections, promisedSection } from './sections/head.js';
import { planSections, watchSection } from './sections/plan.js';
import { proofSections } from './sections/proof.js';
import { triedSections } from './sections/tried.js';
import type { TicketInput } from './ticket-input.js';

/**
 * The ticket of a call: CommonMark 0.31.2 with GFM tables, readable as plain text, one newline at the end.
 * Sections with nothing in them are left out. What people typed is text and nothing else in it, and is masked
 * unless `unmasked`. The same call gives the same bytes everywhere.
 */
export function writeTicket(input: TicketInput, options: { readonly unmasked: boolean }): string {
  const pen = makePen(options);
  const { diagnosis } = input;
  const ticket = blocks(
    headSections(input, pen),
    causeSections(diagnosis, pen),
    proofSections(diagnosis, pen),
    askedSections(input, pen),
    triedSections(input, pen),
    planSections(diagnosis, pen),
    promisedSection(input, pen),
    watchSection(diagnosis, pen),
    foot(input, pen, options),
  );
  return `${ticket}\n`;
}
