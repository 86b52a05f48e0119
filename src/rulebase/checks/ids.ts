import type { Draft, Placed } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import { fileOf, filePlace } from '../layout.js';
import { KINDS, type Kind } from '../records.js';
import { shown } from '../shown.js';

interface Named {
  readonly id: string;
  readonly title: string;
  readonly stage?: string;
}
type Entry = Placed<Named> & { readonly kind: Kind };

/** Conditions name questions, facts and findings alike, so no id may stand for two of them. */
const IN_CONDITIONS: ReadonlySet<Kind> = new Set(['questions', 'facts', 'findings']);

/** Ids are those of the files, unique, never used again and not reserved; titles tell records of a kind apart. */
export function checkIds(draft: Draft): readonly RuleFault[] {
  const entries = KINDS.flatMap((kind) => draft[kind].map((placed): Entry => ({ ...placed, kind })));
  const live = entries.filter(({ kind }) => kind !== 'retired');
  return [
    ...entries.flatMap(filedRight),
    ...twice(entries, ({ kind, record }) => `${kind} ${record.id}`, '/id', 'rules.id-twice'),
    ...twice(entries, ({ kind, record }) => `${kind} ${record.title}`, '/title', 'rules.title-twice'),
    ...sharedIds(live),
    ...live.flatMap((entry) => retired(entry, draft)),
    ...live
      .filter(({ record }) => isReserved(record.id))
      .map(({ file, record }) =>
        error(file, '/id', { id: 'rules.reserved-id', with: { id: shown(record.id) } }),
      ),
  ];
}

export const NOTHING_IS_WRONG = 'nothing-is-wrong-now';
const OTHER_IN = 'other-in-';

function isReserved(id: string): boolean {
  return id.startsWith(OTHER_IN) || id === NOTHING_IS_WRONG;
}

/** The ids that stand for "something else in this stage" and "nothing is wrong". */
export function standIns(stages: Iterable<string>): readonly string[] {
  return [NOTHING_IS_WRONG, ...[...stages].map((stage) => OTHER_IN + stage)];
}

function filedRight({ file, record, kind }: Entry): readonly RuleFault[] {
  const place = filePlace(file);
  const right = fileOf(kind, record.id, record.stage ?? '');
  if (place?.id !== record.id) {
    return [error(file, '/id', { id: 'rules.id-not-file', with: { id: shown(record.id), right } })];
  }
  if (place.stage === undefined || place.stage === record.stage) return [];
  return [error(file, '/stage', { id: 'rules.stage-not-folder', with: { folder: place.stage, right } })];
}

function twice(
  entries: readonly Entry[],
  keyOf: (entry: Entry) => string,
  pointer: string,
  id: 'rules.id-twice' | 'rules.title-twice' | 'rules.id-shared',
): readonly RuleFault[] {
  const first = new Map<string, string>();
  return entries.flatMap((entry) => {
    const key = keyOf(entry);
    const other = first.get(key);
    if (other !== undefined) return [error(entry.file, pointer, { id, with: { other } })];
    first.set(key, entry.file);
    return [];
  });
}

function sharedIds(live: readonly Entry[]): readonly RuleFault[] {
  const seen = new Set<string>();
  // Two of one kind are reported as such already.
  const once = live.filter(({ kind, record }) => {
    const key = `${kind} ${record.id}`;
    return IN_CONDITIONS.has(kind) && !seen.has(key) && seen.add(key);
  });
  return twice(once, ({ record }) => record.id, '/id', 'rules.id-shared');
}

function retired({ file, kind, record }: Entry, draft: Draft): readonly RuleFault[] {
  const gone = draft.retired.find(({ record: { id, kind: old } }) => {
    return id === record.id && (old === kind || (IN_CONDITIONS.has(old) && IN_CONDITIONS.has(kind)));
  });
  return gone === undefined
    ? []
    : [error(file, '/id', { id: 'rules.id-retired', with: { other: gone.file } })];
}
