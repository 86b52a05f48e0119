import type { MessageId, Sentence } from '../../messages/say.js';
import { type Watts, watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { showNumber, showRange } from '../../values/units/show-measure.js';
import { SUPPLY_CAUTIONS } from './cautions.js';
import {
  type Budget,
  type BudgetInput,
  type BudgetInputs,
  leftOf,
  nextWatts,
  portWatts,
  UNKNOWN_NIGHT,
} from './poe-budget.js';
import type { PortUse } from './port-list.js';
import { closingLines } from './run-lines.js';
import { shedUntilFits } from './shed-order.js';

/** What a switch does when its budget is used up. */
export type WhenFull = 'priority' | 'refuses-newest';

const DECIDES: Readonly<Record<BudgetInput, MessageId>> = {
  budget: 'power.decides-budget',
  counts: 'power.decides-counts',
  nightWatts: 'power.decides-night-watts',
  ports: 'power.decides-ports',
  next: 'power.decides-next',
};

/** The ports that go first when the worst comes: none where the switch does not go by priority or all fit. */
export function shedPorts(given: BudgetInputs, budget: Budget): readonly PortUse[] {
  const night = given.nightWatts ?? UNKNOWN_NIGHT;
  const ports = given.ports ?? [];
  const newest = Math.max(0, ...ports.map(({ port }) => port)) + 1;
  const next = given.next && { ...given.next, port: given.next.port === 0 ? newest : given.next.port };
  const uses = next === undefined ? ports : [...ports, next];
  return shedUntilFits(uses, budget.budget.least, (use) => {
    const uses = use === next ? nextWatts(use) : portWatts(use, night);
    if (given.counts === 'class') return uses.allocated.most;
    if (given.counts === 'drawn') return uses.atNight.most;
    return Math.max(uses.allocated.most, uses.atNight.most);
  });
}

/** The budget line by line, its cautions last. */
export function budgetLines(
  given: BudgetInputs,
  budget: Budget,
  whenFull: WhenFull | undefined,
): readonly Sentence[] {
  return [
    given.budget === undefined
      ? { id: 'power.budget-unknown', with: { watts: showRange(budget.budget) } }
      : { id: 'power.budget', with: { watts: showRange(budget.budget) } },
    { id: 'power.budget-class-table' },
    ...(given.ports === undefined ? [{ id: 'power.ports-unknown' } as const] : []),
    ...(given.nightWatts === undefined ? [{ id: 'power.night-unknown' } as const] : []),
    ...totalLines('power.allocated', budget.now.allocated, budget.budget),
    { id: 'power.drawn-by-day', with: { watts: showRange(budget.now.drawn) } },
    ...totalLines('power.drawn-at-night', budget.now.atNight, budget.budget),
    ...(given.next === undefined
      ? []
      : [
          ...totalLines('power.allocated-with-next', budget.withNext.allocated, budget.budget),
          ...totalLines('power.drawn-with-next', budget.withNext.atNight, budget.budget),
        ]),
    { id: countingLine(given) },
    ...fullLines(given, budget, whenFull),
    ...closingLines(budget.decides && DECIDES[budget.decides]),
    ...SUPPLY_CAUTIONS,
  ];
}

function totalLines(id: MessageId, used: Range<Watts>, budget: Range<Watts>): readonly Sentence[] {
  const hard = leftOf(budget.least, used.most);
  const kind = leftOf(budget.most, used.least);
  const left = kind.free > 0 || kind.short === 0;
  return [
    { id, with: { watts: showRange(used) } },
    left
      ? { id: 'power.left', with: { watts: showRange({ least: hard.free, most: kind.free }) } }
      : { id: 'power.short', with: { watts: showRange({ least: kind.short, most: hard.short }) } },
    ...(left && hard.short > 0
      ? [{ id: 'power.maybe-short', with: { watts: showNumber(watts(hard.short)) } } as const]
      : []),
  ];
}

function countingLine({ counts }: BudgetInputs): MessageId {
  if (counts === undefined) return 'power.counts-unknown';
  return counts === 'class' ? 'power.counts-class' : 'power.counts-drawn';
}

function fullLines(given: BudgetInputs, budget: Budget, whenFull: WhenFull | undefined): readonly Sentence[] {
  if (budget.verdict === 'fine') return given.next === undefined ? [] : [{ id: 'power.next-comes-up' }];
  const ports = shedPorts(given, budget).map(({ port }) => port);
  const first: readonly Sentence[] =
    ports.length === 0
      ? []
      : [
          { id: 'power.shed', with: { ports: ports.join(', '), first: ports[0] ?? '' } },
          { id: 'power.shed-source' },
        ];
  if (whenFull === 'refuses-newest') return [{ id: 'power.newest-stays-dark' }];
  if (whenFull === 'priority') return first;
  return [{ id: 'power.when-full-unknown' }, ...first];
}
