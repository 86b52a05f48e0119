import { InputFault } from '../../files/faults.js';
import type { Options } from '../options.js';

/** What `whydark rules` can do with a rule base. */
const VERBS = {
  check: async () => (await import('./rules/check.js')).check,
  compare: async () => (await import('./rules/compare.js')).compare,
  sources: async () => (await import('./rules/sources.js')).sources,
} satisfies Readonly<Record<string, () => Promise<(options: Options) => Promise<number>>>>;

/** `whydark rules check | compare | sources`. */
export async function rules(options: Options): Promise<number> {
  const [verb = '', ...operands] = options.operands;
  if (!isVerb(verb)) {
    const nearest = `rules ${Object.keys(VERBS).find((one) => one.startsWith(verb.slice(0, 2))) ?? 'check'}`;
    throw new InputFault({ id: 'cli.unknown-command-near', with: { word: `rules ${verb}`.trim(), nearest } });
  }
  const run = await VERBS[verb]();
  return run({ ...options, operands });
}

function isVerb(word: string): word is keyof typeof VERBS {
  return Object.hasOwn(VERBS, word);
}
