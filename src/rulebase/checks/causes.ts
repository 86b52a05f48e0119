import type { Draft } from '../draft.js';
import { error, type RuleFault, warning } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import { repeated } from './repeated.js';

/** Causes can be mended, and no record names a cause or an answer where that makes no sense. */
export function checkCauses(draft: Draft, known: Known): readonly RuleFault[] {
  const mended = new Set(draft.remedies.flatMap(({ record }) => record.mends.map(({ cause }) => cause)));
  return [
    ...draft.causes.flatMap(({ file, record }) =>
      mended.has(record.id) || !known.whole ? [] : [warning(file, '', { id: 'rules.cause-unmended' })],
    ),
    ...draft.causes.flatMap(({ file, record }) =>
      record.alsoExplainedBy.flatMap((id, i) =>
        id === record.id ? [error(file, pointer('alsoExplainedBy', i), { id: 'rules.explains-itself' })] : [],
      ),
    ),
    ...draft.remedies.flatMap(({ file, record }) =>
      repeated(record.mends, ({ cause }) => cause).map((i) =>
        error(file, pointer('mends', i, 'cause'), { id: 'rules.twice-in-list' }),
      ),
    ),
    ...draft.contradictions.flatMap(({ file, record }) =>
      record.between.includes(record.check)
        ? []
        : [
            error(file, '/check', {
              id: 'rules.check-not-between',
              with: { known: record.between.join(', ') },
            }),
          ],
    ),
    ...draft.retired.flatMap(({ file, record: { kind, replacedBy } }) =>
      replacedBy === undefined || known.ids[kind].has(replacedBy) || known.ids.retired.has(replacedBy)
        ? []
        : [error(file, '/replacedBy', { id: 'rules.no-such-replacement', with: { id: replacedBy, kind } })],
    ),
  ];
}
