import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOf, EXACT_SIZE, exactPlan, greedyPlan, type Try } from '../../src/steps/repair-plan.js';
import { published } from '../ranking/published.js';
import { fewestMinutes, minutesOf, ordersOf } from './brute-force.js';
import { choiceOf, visitOf } from './plans.js';

/** One remedy for each cause, sure to mend it, at no place in particular. */
function oneForEach(costs: readonly number[]): readonly Try[] {
  return costs.map((minutes, h) => ({ remedy: `r${h + 1}`, place: 'anywhere', minutes, mends: [[h, 1]] }));
}

const ids = (order: readonly Try[]): readonly string[] => order.map(({ remedy }) => remedy);

describe('one sure remedy for each cause and no ways: chance over cost is the best order', () => {
  // Kadane and Simon (1977) as restated in arXiv 1203.3502; the numbers are computed over all orders.
  interface Row {
    readonly p: readonly number[];
    readonly c: readonly number[];
    readonly order: readonly number[];
    readonly ecr: number;
    readonly worst: number;
  }
  const rows = published<readonly Row[]>('i-pc-numeric');

  test.each(rows)('$p at $c', ({ p, c, order, ecr, worst }) => {
    const tries = oneForEach(c);
    // So dear a visit that everything is tried first.
    const dear = visitOf(1e6);
    for (const plan of [greedyPlan(p, 'site', tries, dear), exactPlan(p, 'site', tries, dear)]) {
      expect(ids(plan.order)).toEqual(order.map((i) => `r${i}`));
      expect(plan.minutes).toBeCloseTo(ecr, 6);
    }
    const whole = ordersOf(tries).filter((one) => one.length === tries.length);
    expect(Math.max(...whole.map((one) => minutesOf(p, 'site', one, dear)))).toBeCloseTo(worst, 6);
  });

  test('it is not the best order where the last remedy needs no trying, which is not our case', () => {
    const caveat = published<{ pc_order_cost: number; best_order: readonly number[]; best_cost: number }>(
      'i-pc-caveat',
    );
    const [p, tries] = [[0.5, 0.3, 0.2], oneForEach([10, 3, 4])];
    const lastFree = (order: readonly Try[]): number =>
      minutesOf(
        p,
        'site',
        order.map((one, i) => (i === order.length - 1 ? { ...one, minutes: 0 } : one)),
        visitOf(1e6),
      );
    const { order, minutes } = exactPlan(p, 'site', tries, visitOf(1e6));
    expect(lastFree(order)).toBeCloseTo(caveat.pc_order_cost, 9);
    const cheapest = [...ordersOf(tries)]
      .filter((one) => one.length === tries.length)
      .sort((a, b) => lastFree(a) - lastFree(b))[0];
    expect(ids(cheapest ?? [])).toEqual(caveat.best_order.map((i) => `r${i}`));
    expect(lastFree(cheapest ?? [])).toBeCloseTo(caveat.best_cost, 9);
    // Here the last remedy is tried like the others, so the plan keeps to chance over cost.
    expect(ids(order)).not.toEqual(ids(cheapest ?? []));
    expect(minutes).toBeGreaterThan(caveat.pc_order_cost);
  });
});

describe('the exact plan', () => {
  test('is the best of all orders and all places to stop, ways included', () => {
    fc.assert(
      fc.property(choiceOf(5), ({ probabilities, here, tries, manifest }) => {
        const { minutes, order } = exactPlan(probabilities, here, tries, manifest);
        expect(minutes).toBeCloseTo(fewestMinutes(probabilities, here, tries, manifest), 6);
        expect(minutes).toBeCloseTo(minutesOf(probabilities, here, order, manifest), 6);
      }),
      { numRuns: 150 },
    );
  });

  test('is so for six remedies too', () => {
    fc.assert(
      fc.property(choiceOf(6, 6), ({ probabilities, here, tries, manifest }) => {
        const { minutes } = exactPlan(probabilities, here, tries, manifest);
        expect(minutes).toBeCloseTo(fewestMinutes(probabilities, here, tries, manifest), 6);
      }),
      { numRuns: 40 },
    );
  });

  test('never loses to the greedy one, however many remedies there are', () => {
    fc.assert(
      fc.property(choiceOf(14), ({ probabilities, here, tries, manifest }) => {
        const exact = exactPlan(probabilities, here, tries, manifest);
        expect(exact.order.length).toBeLessThanOrEqual(EXACT_SIZE);
        expect(exact.minutes).toBeCloseTo(minutesOf(probabilities, here, exact.order, manifest), 6);
        const { order } = greedyPlan(probabilities, here, tries, manifest);
        const greedy = minutesOf(probabilities, here, order.slice(0, EXACT_SIZE), manifest);
        expect(exact.minutes).toBeLessThanOrEqual(greedy + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('does not depend on the order in which remedies are given', () => {
    const shuffled = choiceOf(6).chain((choice) =>
      fc
        .shuffledSubarray([...choice.tries], { minLength: choice.tries.length })
        .map((other) => ({ choice, other })),
    );
    fc.assert(
      fc.property(shuffled, ({ choice: { probabilities, here, tries, manifest }, other }) => {
        const one = exactPlan(probabilities, here, tries, manifest);
        const two = exactPlan(probabilities, here, other, manifest);
        expect(ids(two.order)).toEqual(ids(one.order));
      }),
      { numRuns: 60 },
    );
  });

  test('does the jobs at the cabinet together, before the ladder', () => {
    const at = (remedy: string, place: string, h: number): Try => ({
      remedy,
      place,
      minutes: 5,
      mends: [[h, 0.98]],
    });
    const tries = [
      at('camera-job', 'camera', 0),
      at('first-job', 'cabinet', 1),
      at('second-job', 'cabinet', 2),
    ];
    const p = [0.45, 0.3, 0.25];
    const { order } = exactPlan(p, 'site', tries, visitOf(180));
    expect(ids(order)).toEqual(['first-job', 'second-job', 'camera-job']);
    // Chance over minutes alone would climb first.
    const climbing = minutesOf(p, 'site', tries, visitOf(180));
    expect(climbing).toBeGreaterThan(minutesOf(p, 'site', order, visitOf(180)));
  });

  test('breaks ties by id', () => {
    const same = ['b', 'a', 'c'].map(
      (remedy, h): Try => ({ remedy, place: 'cabinet', minutes: 7, mends: [[h, 0.8]] }),
    );
    expect(ids(exactPlan([0.1, 0.1, 0.1], 'site', same, visitOf(180)).order)).toEqual(['a', 'b', 'c']);
  });

  test('takes what differs by less than the noise of a sum for a tie', () => {
    const noisy = [0.3 * (1 + 1e-12), 0.3];
    const [first, second] = ['b', 'a'].map(
      (remedy, h): Try => ({ remedy, place: 'cabinet', minutes: 7, mends: [[h, 0.8]] }),
    );
    if (!first || !second) throw new Error('two remedies');
    expect(ids(exactPlan(noisy, 'site', [first, second], visitOf(180)).order)).toEqual(['a', 'b']);
    expect(ids(greedyPlan(noisy, 'site', [second, first], visitOf(180)).order)).toEqual(['a', 'b']);
  });
});

describe('the greedy plan', () => {
  test('comes near the best of all orders', () => {
    const choices = fc.sample(choiceOf(6, 3), { seed: 20_261_125, numRuns: 120 });
    const ratios = choices.map(({ probabilities, here, tries, manifest }) => {
      const { minutes, order } = greedyPlan(probabilities, here, tries, manifest);
      expect(minutes).toBeCloseTo(minutesOf(probabilities, here, order, manifest), 6);
      return minutes / fewestMinutes(probabilities, here, tries, manifest);
    });
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    const worst = Math.max(...ratios);
    process.stdout.write(`greedy over best of 120: mean ${mean.toFixed(4)}, worst ${worst.toFixed(3)}\n`);
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(mean).toBeLessThan(1.1);
  });

  test('scales: half as likely takes half the expected minutes, in the same order', () => {
    fc.assert(
      fc.property(choiceOf(6), fc.double({ min: 1e-4, max: 1, noNaN: true }), (choice, part) => {
        const { probabilities, here, tries, manifest } = choice;
        const whole = greedyPlan(probabilities, here, tries, manifest);
        const less = greedyPlan(
          probabilities.map((p) => p * part),
          here,
          tries,
          manifest,
        );
        expect(less.minutes).toBeCloseTo(whole.minutes * part, 6);
        expect(ids(less.order)).toEqual(ids(whole.order));
      }),
    );
  });

  test('stops where sending someone is cheaper than going on', () => {
    const [quick, slow] = oneForEach([5, 100]);
    if (!quick || !slow) throw new Error('two remedies');
    const plan = greedyPlan([0.5, 0.5], 'site', [quick, slow], visitOf(60));
    expect(ids(plan.order)).toEqual(['r1']);
    expect(plan.minutes).toBeCloseTo(5 + 0.5 * 60, 9);
  });

  test('without remedies is a visit', () => {
    const nothing = { minutes: 180, order: [] };
    expect(greedyPlan([0.5, 0.5], 'site', [], visitOf(180))).toEqual(nothing);
    expect(exactPlan([0.5, 0.5], 'site', [], visitOf(180))).toEqual(nothing);
  });
});

test('the chance of a remedy is what is left of the causes it mends, each as surely as it mends them', () => {
  const attempt: Try = {
    remedy: 'r',
    place: 'site',
    minutes: 1,
    mends: [
      [0, 0.8],
      [2, 0.5],
    ],
  };
  expect(chanceOf(attempt, [0.5, 0.3, 0.2])).toBeCloseTo(0.5 * 0.8 + 0.2 * 0.5, 12);
});
