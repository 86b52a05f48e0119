import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SUM_NAMES, TOPIC_INPUTS } from '../findings/sums.js';
import { type Assembled, assembleTexts } from '../rulebase/assemble.js';
import { digestOf } from '../rulebase/canonical.js';
import type { RuleFault } from '../rulebase/fault.js';
import type { RuleBase } from '../rulebase/records.js';
import { readRuleFolder } from './rule-folder.js';
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
export async function checkRuleFolder(folder: string, schemas: string): Promise<CheckedFolder> {
  const shapes = Object.fromEntries(readSchemas(schemas).map(({ file, text }) => [file, JSON.parse(text)]));
  const { rulebase, faults }: Assembled = assembleTexts(readRuleFolder(folder), shapes, {
    sums: SUM_NAMES,
    topics: TOPIC_INPUTS,
  });
  return rulebase ? { faults, loaded: { rules: rulebase, digest: await digestOf(rulebase) } } : { faults };
}

/** The schemas beside the bundle whose `import.meta.url` is given, or one folder above it where that is a chunk. */
export function builtSchemas(bundle: string): string {
  const beside = join(dirname(fileURLToPath(bundle)), 'schema');
  return existsSync(beside) ? beside : join(dirname(dirname(fileURLToPath(bundle))), 'schema');
}
