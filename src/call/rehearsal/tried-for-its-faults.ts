import type { CauseId, Remedy, RuleBase } from '../../rulebase/records.js';
import { rehearse } from './rehearse.js';

/** What a remedy is meant for: what it mends in at least half of the calls. */
const MEANT_FOR = 0.5;

/**
 * Whether a remedy is tried, or stands on the list of a visit, in at least one of so many calls in which
 * something is wrong that it mends, what it mends best in turn. It stops at the first.
 */
export async function isTriedForItsFaults(
  rules: RuleBase,
  digest: string,
  remedy: Remedy,
  calls: number,
): Promise<boolean> {
  const faults = meantFor(rules, remedy);
  for (let seed = 0; seed < calls; seed++) {
    const cause = faults[seed % faults.length];
    if (cause === undefined) return false;
    const { tried, leftToDo } = await rehearse(rules, digest, seed, { cause });
    if (tried.includes(remedy.id) || leftToDo.includes(remedy.id)) return true;
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
