import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PortUse, parsePorts } from '../../../src/arithmetic/power/port-list.js';
import { shedOrder, shedUntilFits } from '../../../src/arithmetic/power/shed-order.js';
import { watts } from '../../../src/values/units/physical.js';
import { must } from './given.js';
import { powerRow } from './references.js';

const numbers = (uses: readonly PortUse[]): readonly number[] => uses.map(({ port }) => port);

describe('which port a switch lets go first', () => {
  // Managed-switch manual, PoE power priority (d-shed).
  test('is the highest number of the lowest priority', () => {
    const row = powerRow<{ priorities: string[]; default: string }>('d-shed');
    const [first, second, third] = row.priorities;
    const uses = must(parsePorts(`1 ${third}; 2 ${first}; 3 ${second}; 4 ${second}; 5; 6 ${first}`));
    expect(uses[4]?.priority).toBe(row.default);
    expect(numbers(shedOrder(uses))).toEqual([5, 1, 4, 3, 6, 2]);
  });

  const uses = must(parsePorts('1 class 3; 2 class 3 high; 3 class 3; 4 class 3'));
  const each = (): number => 15.4;

  test.each([
    [61.6, []],
    [61.5, [4]],
    [31, [4, 3]],
    [16, [4, 3, 1]],
    [5, [4, 3, 1, 2]],
  ])('with %d W for four cameras of 15.4 W, %j go', (budget, gone) => {
    expect(numbers(shedUntilFits(uses, watts(budget), each))).toEqual(gone);
  });

  test('never lets go more than it must: with the last one back it would not fit', () => {
    const loads = fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(loads, fc.integer({ min: 1, max: 400 }), (sizes, budget) => {
        const ports = sizes.map((_, index): PortUse => ({ port: index + 1, priority: 'low' }));
        const load = ({ port }: PortUse): number => sizes[port - 1] ?? 0;
        const gone = shedUntilFits(ports, watts(budget), load);
        const kept = ports.filter((port) => !gone.includes(port)).reduce((sum, port) => sum + load(port), 0);
        expect(kept).toBeLessThanOrEqual(budget);
        const last = gone.at(-1);
        if (last !== undefined) expect(kept + load(last)).toBeGreaterThan(budget);
      }),
    );
  });
});
