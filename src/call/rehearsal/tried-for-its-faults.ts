import { mentions } from '../../rulebase/mentions.js';
import type { CauseId, QuestionId, Remedy, RuleBase } from '../../rulebase/records.js';
import { questionsBehind } from '../../steps/open-questions.js';
import { type Rehearsed, rehearse } from './rehearse.js';

/** What a remedy is meant for: what it mends in at least half of the calls. */
const MEANT_FOR = 0.5;

/**
 * Whether a remedy is tried, or stands on the list of a visit, in at least one of so many calls in which
 * something is wrong that it mends, what it mends best in turn. It stops at the first.
 */
export function isTriedForItsFaults(
  rules: RuleBase,
  digest: string,
  remedy: Remedy,
  calls: number,
): Promise<boolean> {
  return isSeen(
    rules,
    digest,
    remedy,
    calls,
    ({ tried, leftToDo }) => tried.includes(remedy.id) || leftToDo.includes(remedy.id),
  );
}

/** Whether a question is asked in at least one of so many calls for each remedy before which it is to be asked. */
export async function isAskedBeforeATry(
  rules: RuleBase,
  digest: string,
  question: QuestionId,
  calls: number,
): Promise<boolean> {
  for (const remedy of rules.remedies) {
    const before = [...(remedy.gate ? mentions(remedy.gate.condition) : []), ...(remedy.askBefore ?? [])];
    if (!before.some((id) => questionsBehind(rules, id).includes(question))) continue;
    if (await isSeen(rules, digest, remedy, calls, ({ asked }) => asked.includes(question))) return true;
  }
  return false;
}

/**
 * Whether a question is asked in at least one of so many calls for each tester fault that rests on it, with callers
 * who check in just that way; what is wrong with the camera changes from call to call.
 */
export async function isAskedOfACheck(
  rules: RuleBase,
  digest: string,
  question: QuestionId,
  calls: number,
): Promise<boolean> {
  for (const testerFault of rules['tester-faults']) {
    const behind = mentions(testerFault.when).flatMap((id) => questionsBehind(rules, id));
    if (!behind.includes(question)) continue;
    for (let seed = 0; seed < calls; seed++) {
      const cause = rules.causes[seed % rules.causes.length]?.id;
      const { asked } = await rehearse(rules, digest, seed, { testerFault, ...(cause ? { cause } : {}) });
      if (asked.includes(question)) return true;
    }
  }
  return false;
}

async function isSeen(
  rules: RuleBase,
  digest: string,
  remedy: Remedy,
  calls: number,
  seen: (call: Rehearsed) => boolean,
): Promise<boolean> {
  const faults = meantFor(rules, remedy);
  for (let seed = 0; seed < calls; seed++) {
    const cause = faults[seed % faults.length];
    if (cause === undefined) return false;
    if (seen(await rehearse(rules, digest, seed, { cause }))) return true;
  }
  return false;
}

function meantFor({ causes, manifest }: RuleBase, { mends }: Remedy): readonly CauseId[] {
  const chance = (word: string) => manifest.words[word] ?? 0;
  const named = mends.filter(({ cause }) => causes.some(({ id }) => id === cause));
  const best = Math.min(
    MEANT_FOR,
    ...named
      .map((one) => chance(one.chance))
      .sort((a, b) => b - a)
      .slice(0, 1),
  );
  return named.filter((one) => chance(one.chance) >= best).map(({ cause }) => cause);
}
