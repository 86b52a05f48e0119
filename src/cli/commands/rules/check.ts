import { existsSync } from 'node:fs';
import { reviewed } from '../../../call/rule-review.js';
import { InputFault } from '../../../files/faults.js';
import { articlesBeside, readArticles } from '../../../files/load-articles.js';
import { builtSchemas, checkRuleSources } from '../../../files/load-rules.js';
import { checkArticles } from '../../../knowledge/check-articles.js';
import { inWords, say } from '../../../messages/say.js';
import type { RuleFault } from '../../../rulebase/fault.js';
import type { RuleBase } from '../../../rulebase/records.js';
import { gradedLine } from '../../fault-line.js';
import type { Options } from '../../options.js';
import { EXIT } from '../../run.js';

/** `whydark rules check [DIR...] [--calls N]`: every fault of a rule base at once. */
export async function check(options: Options): Promise<number> {
  const named = [...options.rules, ...options.operands];
  const sources = named.length === 0 ? ['rules'] : named;
  const calls = callsOf(options);
  const checked = await checkRuleSources(sources, builtSchemas(import.meta.url));
  const { loaded } = checked;
  const faults = loaded
    ? [
        ...(await reviewed(checked.faults, loaded.rules, loaded.digest, calls)),
        ...articleFaults(sources, loaded.rules),
      ]
    : checked.faults;
  const errors = faults.filter(({ grade }) => grade === 'error').length;
  const counts = { errors, warnings: faults.length - errors };
  if (options.json) {
    const digest = loaded?.digest ?? null;
    const report = { format: 1, ...counts, faults: faults.map(inPlainWords), digest };
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
  } else {
    for (const fault of faults) process.stdout.write(`${gradedLine(fault)}\n`);
    process.stdout.write(`${say('cli.rules-faults', counts)}\n`);
    if (loaded) process.stdout.write(`${fine(loaded.rules, loaded.digest)}\n`);
  }
  return errors > 0 ? EXIT.failed : EXIT.done;
}

/** What is wrong with the articles that stand beside a rule base; a rule base without any is not looked at. */
function articleFaults([first = 'rules']: readonly string[], base: RuleBase): readonly RuleFault[] {
  const folder = articlesBeside(first);
  return existsSync(folder) ? checkArticles(base, readArticles(folder)) : [];
}

const MOST_CALLS = 100_000;

/** How many calls are rehearsed; none unless asked for, as each takes a while. */
function callsOf({ given }: Options): number {
  const { calls: text } = given;
  if (text === undefined) return 0;
  const calls = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
  if (calls >= 1 && calls <= MOST_CALLS) return calls;
  throw new InputFault({ id: 'cli.calls', with: { text, most: MOST_CALLS } });
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
