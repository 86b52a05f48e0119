import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BudgetInputs,
  leftOf,
  nextWatts,
  poeBudget,
  portWatts,
} from '../../../src/arithmetic/power/poe-budget.js';
import { POE_CLASSES, poeClass } from '../../../src/arithmetic/power/poe-classes.js';
import { type PortUse, parsePort, parsePorts } from '../../../src/arithmetic/power/port-list.js';
import { watts } from '../../../src/values/units/physical.js';
import { exactly } from '../../../src/values/units/range.js';
import { must, power } from './given.js';
import { powerRow } from './references.js';

const ports = (text: string): readonly PortUse[] => must(parsePorts(text));
const next = (text: string): PortUse => must(parsePort(text));
const DARK = exactly(watts(0));

describe('what a port uses', () => {
  test.each(POE_CLASSES.map(({ number }) => number))(
    'by class %d is what the published table gives',
    (number) => {
      const { allocated } = portWatts({ port: 1, poeClass: poeClass(number), priority: 'low' }, DARK);
      expect(allocated).toEqual(exactly(powerRow<{ pse_w: number }>(`d-class${number}`).pse_w));
    },
  );

  test('of unknown class is at least the smallest that gives what it draws', () => {
    const [use] = ports('1 6.4 W');
    expect(use && portWatts(use, DARK).allocated).toEqual({ least: 7, most: 30 });
    const [large] = ports('1 40 W');
    expect(large && portWatts(large, DARK).allocated).toEqual({ least: 45, most: 45 });
  });

  test('at night is its reading and the infrared, up to its class', () => {
    const night = { least: watts(2), most: watts(20) };
    const [use] = ports('1 class 3 6 W');
    expect(use && portWatts(use, night).atNight).toEqual({ least: 8, most: 15.4 });
  });

  test('a camera to come uses at the port what its label says and what its cable loses', () => {
    expect(nextWatts(next('class 3 9 W')).drawn).toEqual({ least: 9, most: 15.4 });
    expect(nextWatts(next('9 W')).allocated).toEqual({ least: 15.4, most: 15.4 });
    expect(nextWatts(next('?')).allocated).toEqual({ least: 4, most: 30 });
  });
});

describe('the budget of a switch', () => {
  const three = ports('1 class 3 6 W; 2 class 3 6 W; 3 class 3 6 W');
  const base: BudgetInputs = {
    budget: power('60 W'),
    ports: three,
    next: next('class 3 9 W'),
    nightWatts: DARK,
  };

  test.each<[string, Partial<BudgetInputs>, string, string | undefined]>([
    // Four of class 3 are 61.6 W at the port.
    ['by class it is short', { counts: 'class' }, 'impossible', undefined],
    ['by what is drawn it is enough', { counts: 'drawn' }, 'fine', undefined],
    ['how it counts decides', {}, 'doubtful', 'counts'],
    ['a budget that may be larger', { counts: 'class', budget: power('60-120 W') }, 'doubtful', 'budget'],
    ['without the next it is enough', { counts: 'class', next: undefined }, 'fine', undefined],
    [
      'infrared decides',
      { counts: 'drawn', budget: power('40 W'), nightWatts: { least: watts(0), most: watts(6) } },
      'doubtful',
      'nightWatts',
    ],
    [
      'nothing known of the next',
      { counts: 'class', budget: power('65 W'), next: next('?') },
      'doubtful',
      'next',
    ],
    [
      'nothing known of the ports',
      { counts: 'class', budget: power('65 W'), ports: ports('1; 2; 3') },
      'doubtful',
      'ports',
    ],
  ])('%s', (_, change, verdict, decides) => {
    const budget = poeBudget({ ...base, ...change });
    expect([budget.verdict, budget.decides]).toEqual([verdict, decides]);
  });

  test('adds up', () => {
    const { now, withNext } = poeBudget({ ...base, nightWatts: exactly(watts(3)) });
    expect(now.allocated.least).toBeCloseTo(46.2, 9);
    expect(now.drawn).toEqual({ least: 18, most: 18 });
    expect(now.atNight).toEqual({ least: 27, most: 27 });
    expect(withNext.allocated.most).toBeCloseTo(61.6, 9);
  });

  const use = fc.record({
    port: fc.integer({ min: 1, max: 48 }),
    priority: fc.constantFrom('critical' as const, 'high' as const, 'low' as const),
    poeClass: fc.integer({ min: 0, max: 8 }).map(poeClass),
    watts: fc.double({ min: 0.5, max: 90, noNaN: true }).map((value) => exactly(watts(value))),
  });
  const size = fc.double({ min: 5, max: 400, noNaN: true }).map((value) => watts(value));

  test('is never below nought, and what is free and what is short are never both there', () => {
    fc.assert(
      fc.property(size, size, (budget, used) => {
        const { free, short } = leftOf(budget, used);
        expect(Math.min(free, short)).toBe(0);
        expect(free - short).toBeCloseTo(budget - used, 9);
      }),
    );
  });

  test('one more camera, or less to give, never helps', () => {
    const rank = { impossible: 0, doubtful: 1, fine: 2 } as const;
    fc.assert(
      fc.property(size, fc.array(use, { maxLength: 6 }), use, (budget, uses, more) => {
        const verdict = (given: BudgetInputs) => rank[poeBudget(given).verdict];
        const here = verdict({ budget: exactly(budget), ports: uses });
        expect(verdict({ budget: exactly(budget), ports: [...uses, more] })).toBeLessThanOrEqual(here);
        expect(verdict({ budget: exactly(watts(budget * 0.9)), ports: uses })).toBeLessThanOrEqual(here);
      }),
    );
  });
});
