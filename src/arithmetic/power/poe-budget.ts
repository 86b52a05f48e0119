import { type Watts, watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import type { Judged } from '../judge.js';
import { type Ends, judgeEnds } from './judge-ends.js';
import { classForCamera, classForPort, poeClass } from './poe-classes.js';
import type { PortUse } from './port-list.js';

/** How a switch counts what a port uses: what its class may take, or what it draws. */
export type Counting = 'class' | 'drawn';

/** What is known of a switch and its cameras. `undefined` is not known. */
export interface BudgetInputs {
  readonly budget?: Range<Watts> | undefined;
  readonly ports?: readonly PortUse[] | undefined;
  readonly next?: PortUse | undefined;
  readonly counts?: Counting | undefined;
  /** What infrared adds to each camera's reading; nought where the readings were taken in the dark. */
  readonly nightWatts?: Range<Watts> | undefined;
}

/** What one port uses, in each way of counting. All at the port, cable included. */
export interface PortWatts {
  readonly allocated: Range<Watts>;
  readonly drawn: Range<Watts>;
  readonly atNight: Range<Watts>;
}

/** What is left of a budget, and what it is short by: one of them is nought, neither is below. */
export interface Left {
  readonly free: Watts;
  readonly short: Watts;
}

/** Common practice, no source: switches from a small one to a large one. */
export const UNKNOWN_BUDGET: Range<Watts> = { least: watts(30), most: watts(740) };
/** Common practice, no source: from an empty switch to 24 ports of class 4. */
export const UNKNOWN_PORTS: Range<Watts> = { least: watts(0), most: watts(720) };
/** Common practice, no source: what infrared adds. */
export const UNKNOWN_NIGHT: Range<Watts> = { least: watts(0), most: watts(8) };
/** Common practice, no source: no network camera takes less. */
const LEAST_DRAWN = watts(1);
/** Classes above 4 are for large movers: where nothing was said, none is reckoned with. Common practice, no source. */
const USUAL_LARGEST = poeClass(4);

/** A port with a camera on it, as the switch counts it. Day readings, with what infrared may add to them at night. */
export function portWatts(use: PortUse, night: Range<Watts>): PortWatts {
  const least = use.poeClass ?? classForPort(use.watts?.most ?? LEAST_DRAWN);
  const most = use.poeClass ?? (least.portWatts > USUAL_LARGEST.portWatts ? least : USUAL_LARGEST);
  const drawn = use.watts ?? { least: LEAST_DRAWN, most: most.portWatts };
  const atNight = (reading: Watts, added: Watts): Watts =>
    // No port gives more than its class at night that did not by day.
    watts(Math.max(reading, Math.min(reading + added, most.portWatts)));
  return {
    allocated: { least: least.portWatts, most: most.portWatts },
    drawn,
    atNight: { least: atNight(drawn.least, night.least), most: atNight(drawn.most, night.most) },
  };
}

/**
 * A camera still to be plugged in. The watts on a label are at the camera and at most, infrared on: the port gives
 * these and what the cable loses, up to its class.
 */
export function nextWatts(use: PortUse): PortWatts {
  const takes = use.watts;
  const class_ = use.poeClass ?? (takes === undefined ? undefined : classForCamera(takes.most));
  const allocated: Range<Watts> = {
    least: (class_ ?? poeClass(1)).portWatts,
    most: (class_ ?? USUAL_LARGEST).portWatts,
  };
  const drawn = {
    least: takes?.least ?? LEAST_DRAWN,
    most: watts(Math.max(allocated.most, takes?.most ?? 0)),
  };
  return { allocated, drawn, atNight: drawn };
}

export function leftOf(budget: Watts, used: Watts): Left {
  return { free: watts(Math.max(0, budget - used)), short: watts(Math.max(0, used - budget)) };
}

export function sumOf(ranges: readonly Range<Watts>[]): Range<Watts> {
  const total = (end: 'least' | 'most'): Watts => watts(ranges.reduce((sum, range) => sum + range[end], 0));
  return { least: total('least'), most: total('most') };
}

interface Scenario {
  readonly budget: Watts;
  readonly counts: Counting | 'lesser' | 'greater';
  readonly nightWatts: Watts;
  readonly ports: 'least' | 'most';
  readonly next: 'least' | 'most';
}

export type BudgetInput = keyof Scenario;

export interface Budget extends Judged<BudgetInput> {
  readonly budget: Range<Watts>;
  /** What the cameras use that are there, by each way of counting. */
  readonly now: PortWatts;
  /** What they use with the next one. The same where there is none. */
  readonly withNext: PortWatts;
}

/** Whether the budget of a switch is enough at night, the next camera included. */
export function poeBudget(given: BudgetInputs): Budget {
  const budget = given.budget ?? UNKNOWN_BUDGET;
  const night = given.nightWatts ?? UNKNOWN_NIGHT;
  const now = inUse(given.ports, night);
  const withNext = given.next === undefined ? now : totals([now, nextWatts(given.next)]);
  const ends: Ends<Scenario> = {
    budget: { best: budget.most, worst: budget.least },
    counts: { best: given.counts ?? 'lesser', worst: given.counts ?? 'greater' },
    nightWatts: { best: night.least, worst: night.most },
    ports: { best: 'least', worst: 'most' },
    next: { best: 'least', worst: 'most' },
  };
  const margin = (scenario: Scenario): number => scenario.budget - usedIn(given, scenario);
  return {
    ...judgeEnds<Scenario, BudgetInput>(ends, margin, ['budget', 'counts', 'nightWatts', 'ports', 'next']),
    budget,
    now,
    withNext,
  };
}

function usedIn(given: BudgetInputs, { counts, nightWatts, ports, next }: Scenario): number {
  const night = { least: nightWatts, most: nightWatts };
  const there = inUse(given.ports, night);
  const coming = given.next && nextWatts(given.next);
  const byClass = there.allocated[ports] + (coming?.allocated[next] ?? 0);
  const drawn = there.atNight[ports] + (coming?.atNight[next] ?? 0);
  switch (counts) {
    case 'class':
      return byClass;
    case 'drawn':
      return drawn;
    case 'lesser':
      return Math.min(byClass, drawn);
    case 'greater':
      return Math.max(byClass, drawn);
  }
}

function inUse(ports: readonly PortUse[] | undefined, night: Range<Watts>): PortWatts {
  if (ports !== undefined) return totals(ports.map((use) => portWatts(use, night)));
  return { allocated: UNKNOWN_PORTS, drawn: UNKNOWN_PORTS, atNight: UNKNOWN_PORTS };
}

function totals(ports: readonly PortWatts[]): PortWatts {
  return {
    allocated: sumOf(ports.map((port) => port.allocated)),
    drawn: sumOf(ports.map((port) => port.drawn)),
    atNight: sumOf(ports.map((port) => port.atNight)),
  };
}
