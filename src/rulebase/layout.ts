import { KINDS, type Kind } from './records.js';

/** The schema of each kind of record, and of the manifest. */
export const SCHEMA_OF: Readonly<Record<Kind | 'manifest', string>> = {
  manifest: 'manifest.schema.json',
  questions: 'question.schema.json',
  findings: 'finding.schema.json',
  causes: 'cause.schema.json',
  remedies: 'remedy.schema.json',
  facts: 'fact.schema.json',
  contradictions: 'contradiction.schema.json',
  cautions: 'caution.schema.json',
  'tester-faults': 'tester-fault.schema.json',
  retired: 'retired.schema.json',
};

export const MANIFEST = 'manifest.json';

const STAGED: ReadonlySet<Kind> = new Set(['questions', 'findings', 'causes', 'remedies']);

/** What a file's path says about the record in it. */
export interface FilePlace {
  readonly kind: Kind;
  readonly id: string;
  /** Only for kinds that are kept by stage. */
  readonly stage?: string;
}

/** Reads the path of a record inside `rules/`; `undefined` where no record belongs there. */
export function filePlace(file: string): FilePlace | undefined {
  if (!file.endsWith('.json')) return undefined;
  const [folder, ...rest] = file.slice(0, -'.json'.length).split('/');
  const kind = KINDS.find((known) => known === folder);
  if (kind === undefined) return undefined;
  const [first, second, ...more] = rest;
  if (first === undefined || first === '' || more.length > 0) return undefined;
  if (!STAGED.has(kind)) return second === undefined ? { kind, id: first } : undefined;
  return second === undefined || second === '' ? undefined : { kind, stage: first, id: second };
}

/** Where a record of a kind belongs, to tell a person. */
export function fileOf(kind: Kind, id: string, stage: string): string {
  return STAGED.has(kind) ? `${kind}/${stage}/${id}.json` : `${kind}/${id}.json`;
}
