import type { Draft, Placed } from './draft.js';
import { type FactRecord, type Finding, KINDS, type Kind, type Question, type StageId } from './records.js';

/** Names that the program itself knows and a rule base refers to, or the other way round. */
export interface CodeNames {
  /** Sums that a fact may name. */
  readonly sums: readonly string[];
  /** Topics of sums, each with the names of its inputs. */
  readonly topics: ReadonlyMap<string, ReadonlySet<string>>;
  /** What can be read from a pasted text: the type of its answer, or the words it can come out as. */
  readonly observations: ReadonlyMap<string, string | readonly string[]>;
}

/** What there is in a draft, by id, for checks that follow mentions. */
export interface Known {
  readonly code: CodeNames;
  /** Order of each stage along the picture path. */
  readonly stages: ReadonlyMap<StageId, number>;
  readonly places: ReadonlySet<string>;
  readonly kit: ReadonlySet<string>;
  readonly words: ReadonlyMap<string, number>;
  /** Ids by kind, those of unread files included. */
  readonly ids: Readonly<Record<Kind, ReadonlySet<string>>>;
  readonly questions: ReadonlyMap<string, Question>;
  readonly findings: ReadonlyMap<string, Finding>;
  readonly facts: ReadonlyMap<string, FactRecord>;
  /** Whether every file could be read, so that what is not mentioned anywhere is really not. */
  readonly whole: boolean;
}

export function knownIn(draft: Draft, code: CodeNames): Known {
  const manifest = draft.manifest.record;
  const idsOf = (kind: Kind): readonly [Kind, ReadonlySet<string>] => [
    kind,
    new Set([
      ...draft[kind].map(({ record }) => record.id),
      ...draft.unread.filter((place) => place.kind === kind).map((place) => place.id),
    ]),
  ];
  return {
    code,
    stages: new Map(manifest.stages.map(({ id }, order) => [id, order])),
    places: new Set(manifest.places.map(({ id }) => id)),
    kit: new Set(manifest.kit.map(({ id }) => id)),
    words: new Map(Object.entries(manifest.words)),
    ids: Object.fromEntries(KINDS.map(idsOf)) as Record<Kind, ReadonlySet<string>>,
    questions: byId(draft.questions),
    findings: byId(draft.findings),
    facts: byId(draft.facts),
    whole: draft.unread.length === 0,
  };
}

function byId<T extends { readonly id: string }>(placed: readonly Placed<T>[]): ReadonlyMap<string, T> {
  return new Map(placed.map(({ record }) => [record.id, record]));
}

/** The questions a fact is worked out from, through other facts too; each once. Cycles are walked once. */
export function questionsBehind(id: string, known: Known): ReadonlySet<string> {
  const seen = new Set<string>();
  const walk = (each: string): void => {
    if (seen.has(each)) return;
    seen.add(each);
    known.facts.get(each)?.inputs.forEach(walk);
  };
  walk(id);
  return new Set([...seen].filter((each) => known.ids.questions.has(each)));
}
