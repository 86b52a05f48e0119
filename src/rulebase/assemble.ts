import { canonicalText } from './canonical.js';
import { checkMeaning } from './check-meaning.js';
import { checkShape, type RuleFile, type Schemas } from './check-shape.js';
import { type Draft, draftOf } from './draft.js';
import { error, inOrder, isError, type RuleFault } from './fault.js';
import type { CodeNames } from './known.js';
import { filePlace, MANIFEST } from './layout.js';
import { parseFiles, type RuleText } from './parse-files.js';
import { KINDS, type Kind, type RuleBase } from './records.js';

/** A rule base, or nothing of it: with any error there is none. Warnings stand beside a rule base. */
export interface Assembled {
  readonly rulebase?: RuleBase;
  readonly faults: readonly RuleFault[];
}

/** Checks every file of `rules/` and makes one rule base of them. `unread` names files that are no JSON. */
export function assemble(
  files: readonly RuleFile[],
  schemas: Schemas,
  code: CodeNames,
  unread: readonly string[] = [],
): Assembled {
  const shape = checkShape(files, schemas);
  const wrong = new Set([...shape.map(({ file }) => file), ...unread]);
  const missing =
    files.some(({ file }) => file === MANIFEST) || wrong.has(MANIFEST)
      ? []
      : [error(MANIFEST, '', { id: 'rules.no-manifest' })];
  const draft = draftOf(
    files.filter(({ file }) => !wrong.has(file)),
    [...wrong].filter((file) => filePlace(file) !== undefined),
  );
  const faults = inOrder([...missing, ...shape, ...(draft === undefined ? [] : checkMeaning(draft, code))]);
  return draft === undefined || wrong.size > 0 || faults.some(isError)
    ? { faults }
    : { rulebase: ruleBaseOf(draft), faults };
}

/** The same from the texts of the files. */
export function assembleTexts(texts: readonly RuleText[], schemas: Schemas, code: CodeNames): Assembled {
  const parsed = parseFiles(texts);
  const unread = parsed.faults.map(({ file }) => file);
  const { rulebase, faults } = assemble(parsed.files, schemas, code, unread);
  return { ...(rulebase && { rulebase }), faults: inOrder([...parsed.faults, ...faults]) };
}

/** Read back from its canonical text, a rule base is the same, order of names included, as the built one. */
function ruleBaseOf(draft: Draft): RuleBase {
  const parts = KINDS.map((kind: Kind) => [kind, draft[kind].map(({ record }) => record)]);
  return JSON.parse(canonicalText({ manifest: draft.manifest.record, ...Object.fromEntries(parts) }));
}
