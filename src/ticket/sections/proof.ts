import type { Diagnosis, StageState } from '../../diagnosis/diagnosis.js';
import { say } from '../../messages/say.js';
import { blocks, bullets, section, withList } from '../markdown.js';
import type { Pen } from '../pen.js';

/** What arithmetic shows, the sums written out, then what works and what nobody has looked at. */
export function proofSections(diagnosis: Diagnosis, pen: Pen): string {
  return blocks(defects(diagnosis, pen), works(diagnosis, pen));
}

function defects({ defects, ranked }: Diagnosis, pen: Pen): string {
  const items = defects.map(({ grade, says, cause, lines }) => {
    const named = ranked.find(({ id }) => id === cause)?.title;
    const points = named === undefined ? [] : [say('ticket.defect-points', { cause: pen.ours(named) })];
    const sum = lines.map((line) => pen.typed(line));
    return withList(say(`ticket.defect-${grade}`, { defect: pen.typed(says) }), bullets([...sum, ...points]));
  });
  return section(
    say('ticket.defects'),
    items.length === 0 ? '' : say('ticket.defects-means'),
    bullets(items),
  );
}

function works({ works, path }: Diagnosis, pen: Pen): string {
  const stages = (state: StageState): string[] => {
    const titles = path.filter((stage) => stage.state === state).map(({ title }) => pen.ours(title));
    return titles.length === 0 ? [] : [say(`ticket.path-${state}`, { stages: titles.join(', ') })];
  };
  return section(
    say('ticket.works'),
    bullets(works.map(({ says }) => pen.ours(says))),
    path.length === 0 ? '' : say('ticket.path'),
    bullets((['good', 'faulty', 'suspect', 'unseen'] as const).flatMap(stages)),
  );
}
