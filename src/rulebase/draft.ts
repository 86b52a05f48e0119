import type { RuleFile } from './check-shape.js';
import { type FilePlace, filePlace, MANIFEST } from './layout.js';
import type { Manifest } from './manifest.js';
import type { Kind, Records } from './records.js';

/** A record with the file it stands in. */
export interface Placed<T> {
  readonly file: string;
  readonly record: T;
}

type PlacedRecords = { readonly [K in Kind]: readonly Placed<Records[K][number]>[] };

/** A rule base whose shape is right and whose meaning is still to be checked. */
export interface Draft extends PlacedRecords {
  readonly manifest: Placed<Manifest>;
  /** Files that are there but could not be read: their ids count as known, and nothing else about them is. */
  readonly unread: readonly FilePlace[];
}

/** Sorts files of the right shape by kind. `undefined` without a readable manifest: nothing can be checked then. */
export function draftOf(files: readonly RuleFile[], unread: readonly string[]): Draft | undefined {
  const manifest = files.find(({ file }) => file === MANIFEST);
  if (manifest === undefined) return undefined;
  // The schemas have held the shapes; the types only repeat what they say.
  const placed = <K extends Kind>(kind: K): readonly Placed<Records[K][number]>[] =>
    files
      .filter(({ file }) => filePlace(file)?.kind === kind)
      .map(({ file, json }) => ({ file, record: json as Records[K][number] }));
  return {
    manifest: { file: MANIFEST, record: manifest.json as Manifest },
    questions: placed('questions'),
    findings: placed('findings'),
    causes: placed('causes'),
    remedies: placed('remedies'),
    facts: placed('facts'),
    contradictions: placed('contradictions'),
    cautions: placed('cautions'),
    'tester-faults': placed('tester-faults'),
    retired: placed('retired'),
    unread: unread.flatMap((file) => filePlace(file) ?? []),
  };
}
