import { ok, type Result } from '../../values/result.js';
import { EXTRA_POWER, SWITCH_POWER } from '../../values/units/dimension.js';
import { parseRange } from '../../values/units/parse-range.js';
import { budgetLines, shedPorts, type WhenFull } from '../power/budget-lines.js';
import { type BudgetInput, type BudgetInputs, leftOf, poeBudget } from '../power/poe-budget.js';
import { parsePort, parsePorts } from '../power/port-list.js';
import { needed, optional, orUnknown, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

/** May be left out; nobody need know. */
const maybe = <T>(parse: (text: string) => Result<T>) => optional(orUnknown(parse), undefined);

const READS = {
  budget: needed(orUnknown((text) => parseRange(text, SWITCH_POWER))),
  ports: needed(orUnknown(parsePorts)),
  next: maybe(parsePort),
  counts: maybe(parseChoice(['class', 'drawn'])),
  'night-watts': maybe((text) => parseRange(text, EXTRA_POWER)),
  'when-full': maybe(parseChoice(['priority', 'refuses-newest'])),
} as const;

const OPTIONS: Readonly<Record<BudgetInput, keyof typeof READS>> = {
  budget: 'budget',
  counts: 'counts',
  nightWatts: 'night-watts',
  ports: 'ports',
  next: 'next',
};

/** Whether the power budget of a switch is enough for its cameras at night, and for one more. */
export const POE_BUDGET: Topic = {
  id: 'poe-budget',
  title: 'power.budget-title',
  inputs: [
    { id: 'budget', ask: 'power.ask-budget' },
    { id: 'ports', ask: 'power.ask-ports' },
    { id: 'next', ask: 'power.ask-next', optional: true },
    {
      id: 'counts',
      ask: 'power.ask-counts',
      optional: true,
      choices: [
        { id: 'class', title: 'power.by-class' },
        { id: 'drawn', title: 'power.by-drawn' },
      ],
    },
    { id: 'night-watts', ask: 'power.ask-night-watts', optional: true },
    {
      id: 'when-full',
      ask: 'power.ask-when-full',
      optional: true,
      choices: [
        { id: 'priority', title: 'power.full-priority' },
        { id: 'refuses-newest', title: 'power.full-newest' },
      ],
    },
  ],
  reckon: (given: Given) => {
    const read = readGiven(given, READS);
    if (!read.ok) return read;
    const typed = read.value;
    const inputs: BudgetInputs = {
      budget: typed.budget,
      ports: typed.ports,
      next: typed.next,
      counts: typed.counts,
      nightWatts: typed['night-watts'],
    };
    return ok(reckoning(inputs, typed['when-full']));
  },
};

function reckoning(inputs: BudgetInputs, whenFull: WhenFull | undefined): Reckoning {
  const budget = poeBudget(inputs);
  const worst = leftOf(budget.budget.least, budget.withNext.allocated.most);
  const worstDrawn = leftOf(budget.budget.least, budget.withNext.atNight.most);
  return {
    verdict: budget.verdict,
    ...(budget.decides === undefined ? {} : { decides: OPTIONS[budget.decides] }),
    lines: budgetLines(inputs, budget, whenFull),
    data: {
      budgetWatts: budget.budget,
      allocatedWatts: budget.now.allocated,
      drawnWatts: budget.now.drawn,
      nightWatts: budget.now.atNight,
      allocatedWithNextWatts: budget.withNext.allocated,
      nightWithNextWatts: budget.withNext.atNight,
      freeAtWorstByClassWatts: worst.free,
      shortAtWorstByClassWatts: worst.short,
      freeAtWorstDrawnWatts: worstDrawn.free,
      shortAtWorstDrawnWatts: worstDrawn.short,
      shedByPriorityPorts: shedPorts(inputs, budget).map(({ port }) => port),
    },
  };
}
