import type { Sign, ValueId } from '../rulebase/records.js';

/** No value is ever impossible: one thing a person said must not rule a cause out for good. */
export const FLOOR = 0.005;

/**
 * How often each value of a finding shows when a cause is present: listed words as they stand, unlisted values
 * share what is left in proportion to their usual shares. Then the floor, then the sum is brought back to 1.
 * `usual` and the result are in the same order of values. Throws on an unknown word (the check at load finds it).
 */
export function spread(
  sign: Sign | undefined,
  usual: ReadonlyMap<ValueId, number>,
  words: Readonly<Record<string, number>>,
): readonly number[] {
  const listed = new Map<ValueId, number>();
  for (const [value, word] of Object.entries(sign ?? {})) {
    const share = words[word];
    if (share === undefined) throw new Error(`unknown frequency word "${word}"`);
    listed.set(value, share);
  }
  const left = 1 - sum(listed.values());
  const unlisted = sum([...usual].filter(([value]) => !listed.has(value)).map(([, share]) => share));
  const shares = [...usual].map(
    ([value, share]) => listed.get(value) ?? (unlisted > 0 ? (left * share) / unlisted : 0),
  );
  return floored(shares);
}

/** Each share at least the floor, the whole brought back to 1. */
export function floored(shares: readonly number[]): readonly number[] {
  const raised = shares.map((share) => Math.max(share, FLOOR));
  const total = sum(raised);
  return raised.map((share) => share / total);
}

function sum(numbers: Iterable<number>): number {
  let total = 0;
  for (const number of numbers) total += number;
  return total;
}
