import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SUM_NAMES, TOPIC_INPUTS } from '../findings/sums.js';
import { OBSERVATION_SHAPES } from '../intake/observations.js';
import { ADDITIONS, type Merged, withAdditions } from '../rulebase/additions.js';
import { type Assembled, assembleTexts } from '../rulebase/assemble.js';
import { digestOf } from '../rulebase/canonical.js';
import { inOrder, isError, type RuleFault } from '../rulebase/fault.js';
import type { RuleText } from '../rulebase/parse-files.js';
import type { RuleBase } from '../rulebase/records.js';
import { unpacked } from '../rulebase/unpacked.js';
import { readLargeText, readRuleFolder } from './rule-folder.js';
import { readSchemas } from './schemas.js';

/** A rule base ready for use, with its digest. */
export interface LoadedRules {
  readonly rules: RuleBase;
  readonly digest: string;
}

/** A checked folder: every fault, and the rule base where none of them is an error. */
export interface CheckedFolder {
  readonly faults: readonly RuleFault[];
  readonly loaded?: LoadedRules;
}

/** Checks a rules folder against schemas. Throws an InputFault or a MachineFault where one cannot be read. */
export function checkRuleFolder(folder: string, schemas: string): Promise<CheckedFolder> {
  return checkRuleSources([folder], schemas);
}

/**
 * Checks a rule base of several sources as one: the first a rules folder or a packed `rules.json`, the others
 * folders of additions, later ones on top. Throws an InputFault or a MachineFault where one cannot be read.
 */
export async function checkRuleSources(sources: readonly string[], schemas: string): Promise<CheckedFolder> {
  const [first = 'rules', ...more] = sources;
  const shapes = Object.fromEntries(readSchemas(schemas).map(({ file, text }) => [file, JSON.parse(text)]));
  const merged = more.reduce<Merged>(
    (before, folder) => {
      const { texts, faults } = withAdditions(before.texts, readRuleFolder(folder, ADDITIONS));
      return { texts, faults: [...before.faults, ...faults] };
    },
    { texts: textsIn(first), faults: [] },
  );
  const assembled: Assembled = assembleTexts(merged.texts, shapes, {
    sums: SUM_NAMES,
    topics: TOPIC_INPUTS,
    observations: OBSERVATION_SHAPES,
  });
  const faults = inOrder([...merged.faults, ...assembled.faults]);
  const { rulebase } = assembled;
  return rulebase && !faults.some(isError)
    ? { faults, loaded: { rules: rulebase, digest: await digestOf(rulebase) } }
    : { faults };
}

function textsIn(source: string): readonly RuleText[] {
  return source.endsWith('.json') ? unpacked(readLargeText(source)) : readRuleFolder(source);
}

/** The schemas beside the bundle whose `import.meta.url` is given, or one folder above it where that is a chunk. */
export function builtSchemas(bundle: string): string {
  const beside = join(dirname(fileURLToPath(bundle)), 'schema');
  return existsSync(beside) ? beside : join(dirname(dirname(fileURLToPath(bundle))), 'schema');
}
