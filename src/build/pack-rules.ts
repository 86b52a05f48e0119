import { cpSync, existsSync, mkdirSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import articleSchema from '../cli/output/article.schema.json' with { type: 'json' };
import articlesSchema from '../cli/output/articles.schema.json' with { type: 'json' };
import hereSchema from '../cli/output/here.schema.json' with { type: 'json' };
import questionsSchema from '../cli/output/questions.schema.json' with { type: 'json' };
import readSchema from '../cli/output/read.schema.json' with { type: 'json' };
import reckonSchema from '../cli/output/reckon.schema.json' with { type: 'json' };
import topicsSchema from '../cli/output/reckon-topics.schema.json' with { type: 'json' };
import checkSchema from '../cli/output/rules-check.schema.json' with { type: 'json' };
import compareSchema from '../cli/output/rules-compare.schema.json' with { type: 'json' };
import sourcesSchema from '../cli/output/rules-sources.schema.json' with { type: 'json' };
import diagnosisSchema from '../diagnosis/diagnosis.schema.json' with { type: 'json' };
import { attempt, InputFault, MachineFault } from '../files/faults.js';
import { checkRuleFolder } from '../files/load-rules.js';
import { printable } from '../files/printable.js';
import { inWords } from '../messages/say.js';
import { canonicalText } from '../rulebase/canonical.js';
import type { RuleFault } from '../rulebase/fault.js';

/** The published schemas of what the commands print with `--json`. */
const OUTPUT_SCHEMAS = {
  article: articleSchema,
  articles: articlesSchema,
  diagnosis: diagnosisSchema,
  here: hereSchema,
  questions: questionsSchema,
  read: readSchema,
  reckon: reckonSchema,
  'reckon-topics': topicsSchema,
  'rules-check': checkSchema,
  'rules-compare': compareSchema,
  'rules-sources': sourcesSchema,
};

export interface Packed {
  readonly faults: readonly RuleFault[];
  /** The canonical text and its digest; missing where there is an error. */
  readonly built?: { readonly text: string; readonly digest: string };
}

/**
 * Reads and checks a rules folder, and packs it into one text with its digest. Throws an InputFault or a
 * MachineFault where the folder cannot be read.
 */
export async function packRules(folder: string): Promise<Packed> {
  const { faults, loaded } = await checkRuleFolder(folder, join(folder, 'schema'));
  return loaded
    ? { faults, built: { text: canonicalText(loaded.rules), digest: loaded.digest } }
    : { faults };
}

/** A fault on one line, as it is printed. */
export function faultLine({ file, pointer, says }: RuleFault): string {
  return `${printable(file)} ${printable(pointer)}: ${inWords(says)}`;
}

/**
 * Packs `<root>/rules` into `<root>/dist`, with a copy of the articles in `<root>/knowledge`; says every fault,
 * and gives the exit status.
 */
export async function packInto(root: string, say: (line: string) => void): Promise<number> {
  const rules = join(root, 'rules');
  const knowledge = join(root, 'knowledge');
  const { faults, built } = await packRules(rules);
  faults.map(faultLine).forEach(say);
  if (built === undefined) return 1;
  const dist = join(root, 'dist');
  attempt(dist, () => {
    mkdirSync(dist, { recursive: true });
    writeFileSync(join(dist, 'rules.json'), built.text);
    writeFileSync(join(dist, 'rules.digest'), `${built.digest}\n`);
    cpSync(join(rules, 'schema'), join(dist, 'schema'), { recursive: true });
    rmSync(join(dist, 'knowledge'), { recursive: true, force: true });
    if (existsSync(knowledge)) cpSync(knowledge, join(dist, 'knowledge'), { recursive: true });
    else mkdirSync(join(dist, 'knowledge'));
    for (const [name, schema] of Object.entries(OUTPUT_SCHEMAS)) {
      writeFileSync(join(dist, 'schema', `${name}.schema.json`), JSON.stringify(schema, null, 2));
    }
  });
  return 0;
}

async function main(): Promise<number> {
  const say = (line: string) => process.stderr.write(`${line}\n`);
  try {
    return await packInto(process.cwd(), say);
  } catch (fault) {
    if (!(fault instanceof InputFault || fault instanceof MachineFault)) throw fault;
    say(fault.message);
    return fault.exit;
  }
}

// Node gives a script's own place with links followed, but not the way it was called.
if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(realpathSync(process.argv[1])).href) {
  process.exitCode = await main();
}
