import { InputFault } from '../../files/faults.js';
import { builtSchemas, checkRuleFolder } from '../../files/load-rules.js';
import { inWords, say } from '../../messages/say.js';
import type { RuleFault } from '../../rulebase/fault.js';
import type { RuleBase } from '../../rulebase/records.js';
import { gradedLine } from '../fault-line.js';
import type { Options } from '../options.js';
import { EXIT } from '../run.js';

/** `whydark rules check [DIR]`: every fault of a rule base at once. */
export async function rules(options: Options): Promise<number> {
  const [verb, folder = options.rules ?? 'rules', extra] = options.operands;
  if (verb !== 'check')
    throw new InputFault({
      id: 'cli.unknown-command-near',
      with: { word: `rules ${verb ?? ''}`.trim(), nearest: 'rules check' },
    });
  if (extra !== undefined)
    throw new InputFault({ id: 'cli.too-many', with: { command: 'rules check', extra } });
  const { faults, loaded } = await checkRuleFolder(folder, builtSchemas(import.meta.url));
  const errors = faults.filter(({ grade }) => grade === 'error').length;
  const counts = { errors, warnings: faults.length - errors };
  if (options.json) {
    const report = { format: 1, ...counts, faults: faults.map(inPlainWords), digest: loaded?.digest ?? null };
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
  } else {
    for (const fault of faults) process.stdout.write(`${gradedLine(fault)}\n`);
    process.stdout.write(`${say('cli.rules-faults', counts)}\n`);
    if (loaded) process.stdout.write(`${fine(loaded.rules, loaded.digest)}\n`);
  }
  return errors > 0 ? EXIT.failed : EXIT.done;
}

function inPlainWords({ grade, file, pointer, says }: RuleFault): object {
  return { grade, file, pointer, message: says.id, says: inWords(says) };
}

function fine(base: RuleBase, digest: string): string {
  const others =
    base.facts.length + base.contradictions.length + base.cautions.length + base['tester-faults'].length;
  return say('cli.rules-fine', {
    version: base.manifest.version,
    causes: base.causes.length,
    questions: base.questions.length,
    findings: base.findings.length,
    remedies: base.remedies.length,
    others,
    digest: digest.slice(0, 12),
  });
}
