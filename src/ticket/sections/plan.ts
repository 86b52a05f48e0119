import type { Diagnosis, PlannedStep } from '../../diagnosis/diagnosis.js';
import { say } from '../../messages/say.js';
import { blocks, bullets, numbered, section, withList } from '../markdown.js';
import type { Pen } from '../pen.js';

/** The next steps in order, then what to bring and do where someone has to go. */
export function planSections({ plan, visit }: Diagnosis, pen: Pen): string {
  return blocks(
    section(say('ticket.next'), numbered(plan.map((step) => planned(step, pen)))),
    visit === undefined ? '' : visitSection(visit, pen),
  );
}

/** What to watch, and when to ring back. */
export function watchSection({ watch }: Diagnosis, pen: Pen): string {
  return section(say('ticket.watch'), watch === undefined ? '' : pen.ours(watch));
}

/** Cautions stand before what they warn of. */
function planned({ title, who, where, minutes, cautions, how, check, undo }: PlannedStep, pen: Pen): string {
  return withList(
    pen.ours(title),
    bullets([
      say('ticket.who', { who: say(`ticket.who-${who}`) }),
      say('ticket.where', { where: pen.ours(where) }),
      say('ticket.minutes', { minutes }),
      ...cautions.map((caution) => say('ticket.caution', { caution: pen.ours(caution) })),
      ...(how.length === 0 ? [] : [withList(say('ticket.how'), numbered(how.map(pen.ours)))]),
      ...(check === '' ? [] : [say('ticket.check', { check: pen.ours(check) })]),
      ...(undo === '' ? [] : [say('ticket.undo', { undo: pen.ours(undo) })]),
    ]),
  );
}

function visitSection(
  { minutes, days, doThere, bring, cautions }: NonNullable<Diagnosis['visit']>,
  pen: Pen,
): string {
  const list = (heading: string, items: string): string => (items === '' ? '' : blocks(heading, items));
  return section(
    say('ticket.visit'),
    bullets([say('ticket.visit-labour', { minutes }), say('ticket.visit-waiting', { days })]),
    bullets(cautions.map((caution) => say('ticket.caution', { caution: pen.ours(caution) }))),
    list(say('ticket.visit-do'), numbered(doThere.map(pen.ours))),
    list(say('ticket.visit-bring'), bullets(bring.map(pen.ours))),
  );
}
