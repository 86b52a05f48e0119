import { canonicalJson } from '../canonical.js';
import { KINDS, type Kind, type RuleBase } from '../records.js';

/** What a difference does: another wording, another weight, another condition or shape. */
export type Nature = 'reworded' | 'reweighed' | 'rewired';

/** One record, or the manifest, that is not the same in two rule bases. */
export type Change =
  | { readonly kind: Kind; readonly id: string; readonly what: 'added' }
  | { readonly kind: Kind; readonly id: string; readonly what: 'removed' }
  | {
      readonly kind: Kind | 'manifest';
      readonly id: string;
      readonly what: 'changed';
      /** The fields that differ, as dotted paths, by what the difference does. */
      readonly fields: Readonly<Record<Nature, readonly string[]>>;
    };

/** Fields that only a person reads; judged by their names, wherever they stand. */
const WORDS = new Set([
  ...['title', 'prompt', 'help', 'verdict', 'steps', 'says', 'words', 'why', 'check', 'undo', 'leaves'],
  ...['bring', 'article', 'source', 'section', 'date', 'version', 'because'],
]);
/** Fields whose numbers and frequency words move the ranking or the plan, and nothing else. */
const WEIGHTS = new Set([
  ...['prior', 'signs', 'usual', 'sign', 'minutes', 'chance', 'words', 'said', 'agreed', 'pasted', 'read'],
  ...[
    'disputed',
    'otherShare',
    'labourMinutes',
    'waitDays',
    'minutesPerDay',
    'subjectPrice',
    'tryPrice',
    'cantTell',
  ],
]);
/** Every record that differs, in the order of kinds and ids; the manifest first. */
export function changesBetween(older: RuleBase, newer: RuleBase): readonly Change[] {
  const manifest = changed('manifest', 'manifest', older.manifest, newer.manifest);
  return [...manifest, ...KINDS.flatMap((kind) => ofKind(kind, older, newer))];
}

function ofKind(kind: Kind, older: RuleBase, newer: RuleBase): readonly Change[] {
  const before = new Map(older[kind].map((record): [string, object] => [record.id, record]));
  const after = new Map(newer[kind].map((record): [string, object] => [record.id, record]));
  return [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((id): readonly Change[] => {
    const [was, is] = [before.get(id), after.get(id)];
    if (was === undefined) return [{ kind, id, what: 'added' }];
    if (is === undefined) return [{ kind, id, what: 'removed' }];
    return changed(kind, id, was, is);
  });
}

function changed(kind: Kind | 'manifest', id: string, was: object, is: object): readonly Change[] {
  const paths = differing(was, is, []);
  if (paths.length === 0) return [];
  const of = (nature: Nature) =>
    paths.filter((path) => natureOf(kind, path) === nature).map((path) => path.join('.'));
  const fields = { reworded: of('reworded'), reweighed: of('reweighed'), rewired: of('rewired') };
  return [{ kind, id, what: 'changed', fields }];
}

function natureOf(kind: Kind | 'manifest', path: readonly string[]): Nature {
  const last = path.findLast((name) => !/^\d+$/.test(name)) ?? '';
  // In the manifest `words` are the frequency words, with their numbers.
  const isWeight = path.some((name) => WEIGHTS.has(name) && !(name === 'words' && kind !== 'manifest'));
  if (isWeight) return 'reweighed';
  return WORDS.has(last) || path.some((name) => name === 'steps' || name === 'source')
    ? 'reworded'
    : 'rewired';
}

/** Paths at which two values differ; below what is only on one side it does not look. */
function differing(was: unknown, is: unknown, path: readonly string[]): readonly (readonly string[])[] {
  if (canonicalJson(was ?? null) === canonicalJson(is ?? null)) return [];
  const [before, after] = [partsOf(was), partsOf(is)];
  if (!before || !after) return [path];
  const names = [...new Set([...before.keys(), ...after.keys()])].filter((name) => name !== '$schema');
  const within = names.flatMap((name) => differing(before.get(name), after.get(name), [...path, name]));
  // Equal part by part, and yet not the same: they stand in another order.
  return within.length === 0 && Array.isArray(was) ? [path] : within;
}

function partsOf(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (Array.isArray(value)) {
    const name = nameIn(value);
    return new Map(value.map((one, at) => [name(one) ?? String(at), one]));
  }
  return typeof value === 'object' && value !== null ? new Map(Object.entries(value)) : undefined;
}

/** Lists of ids and of things with an id are compared by id; sentences, and parts of a condition, by place. */
function nameIn(list: readonly unknown[]): (one: unknown) => string | undefined {
  const isId = (one: unknown): one is string => typeof one === 'string' && !one.includes(' ');
  if (list.every(isId)) return (one) => (isId(one) ? one : undefined);
  const field = (one: unknown, name: string): unknown =>
    typeof one === 'object' && one !== null ? (one as Readonly<Record<string, unknown>>)[name] : undefined;
  const isRule = list.every((one) => field(one, 'conditions') !== undefined);
  const key = ['id', 'cause', ...(isRule ? ['value'] : [])].find((name) =>
    list.every((one) => isId(field(one, name))),
  );
  return (one) => (key === undefined ? undefined : String(field(one, key)));
}
