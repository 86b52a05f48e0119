import { checkRuleFolder } from '../../../src/files/load-rules.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { cutStarts } from './cuts.js';
import { exactModelOf } from './exact-model.js';
import { optimum } from './optimum.js';
import { policyCost } from './policy-cost.js';
import { randomStart } from './random-model.js';

/** Expected minutes of a policy over the fewest that any policy takes, over a set of models. */
export interface RatioRow {
  readonly name: string;
  readonly models: number;
  readonly mean: number;
  readonly p95: number;
  readonly worst: number;
}

const CUTS = 20;
const FIRST_SEED = 1;

/**
 * How near the steps come to the exact optimum: on so many random models with places, ours and ours planned as if
 * no way took time; and on small cuts of the real rule base. Run from the root of the repository.
 */
export async function exactRatios(seedCount: number): Promise<readonly RatioRow[]> {
  const starts = seeds(seedCount).map(randomStart);
  const fewest = starts.map((start) => optimum(exactModelOf(start)));
  const ratios = (cost: (start: Situation) => number): readonly number[] =>
    starts.map((start, at) => cost(start) / (fewest[at] ?? 1));
  return [
    rowOf(
      'random models with places',
      ratios((start) => policyCost(start)),
    ),
    rowOf(
      'random models, ways ignored in planning',
      ratios((start) => policyCost(start, withoutWays(start.rules))),
    ),
    rowOf('cuts of the rule base', await cutRatios(CUTS)),
  ];
}

/** The ratio of each of so many seeded cuts of the rule base in `rules/`. */
export async function cutRatios(count: number): Promise<readonly number[]> {
  const { loaded } = await checkRuleFolder('rules', 'rules/schema');
  if (!loaded) throw new Error('the rule base has faults');
  return cutStarts(loaded.rules, count).map(ratioOf);
}

/** Expected minutes of our steps over the fewest possible; 1 where nothing could be done better. */
export function ratioOf(start: Situation): number {
  return policyCost(start) / optimum(exactModelOf(start));
}

/** The same rule base where everything is at hand, to plan by. */
export function withoutWays(rules: RuleBase): RuleBase {
  return { ...rules, manifest: { ...rules.manifest, ways: [] } };
}

/** Mean, 95th percentile (nearest rank) and worst of these ratios. */
export function rowOf(name: string, ratios: readonly number[]): RatioRow {
  const sorted = [...ratios].sort((a, b) => a - b);
  const mean = sorted.reduce((sum, one) => sum + one, 0) / sorted.length;
  const p95 = sorted[Math.ceil(0.95 * sorted.length) - 1] ?? Number.NaN;
  return { name, models: sorted.length, mean, p95, worst: sorted.at(-1) ?? Number.NaN };
}

function seeds(count: number): readonly number[] {
  return Array.from({ length: count }, (_, at) => FIRST_SEED + at);
}
