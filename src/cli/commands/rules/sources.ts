import { restsOn } from '../../../call/rule-review.js';
import { say } from '../../../messages/say.js';
import { rulesFor } from '../../load-rules.js';
import type { Options } from '../../options.js';
import { EXIT } from '../../run.js';

/** `whydark rules sources [--json]`: what the rule base rests on, and which records rest on what. */
export async function sources(options: Options): Promise<number> {
  const { rules } = await rulesFor({ ...options, rules: [...options.rules, ...options.operands] });
  const list = restsOn(rules);
  if (options.json) {
    process.stdout.write(
      `${JSON.stringify({ format: 1, version: rules.manifest.version, ...list }, null, 2)}\n`,
    );
    return EXIT.done;
  }
  for (const { title, section, standing, records } of list.published) {
    process.stdout.write(
      `${say('cli.source', { title, section, standing: say(`cli.source-${standing}`) })}\n`,
    );
    process.stdout.write(`  ${records.join(' ')}\n`);
  }
  process.stdout.write(
    `${say('cli.sources-count', { published: list.published.length, practice: list.practice, judged: list.judged })}\n`,
  );
  return EXIT.done;
}
