import { loadBuiltRules } from '../files/built-rules.js';
import { InputFault } from '../files/faults.js';
import type { LoadedRules } from '../files/load-rules.js';
import { gradedLine } from './fault-line.js';
import type { Options } from './options.js';

/**
 * The rule base of `--rules DIR`, checked first, else the one that the build packed. Given more than once, the
 * later folders are additions to the first.
 */
export async function rulesFor({ rules: sources }: Pick<Options, 'rules'>): Promise<LoadedRules> {
  if (sources.length === 0) {
    const built = loadBuiltRules(import.meta.url);
    await built.verify();
    return { rules: built.ruleBase, digest: built.digest };
  }
  const { builtSchemas, checkRuleSources } = await import('../files/load-rules.js');
  const { faults, loaded } = await checkRuleSources(sources, builtSchemas(import.meta.url));
  if (loaded) return loaded;
  for (const fault of faults) process.stderr.write(`${gradedLine(fault)}\n`);
  const count = faults.filter(({ grade }) => grade === 'error').length;
  throw new InputFault({ id: 'cli.rules-broken', with: { folder: sources.join(' + '), count } });
}
