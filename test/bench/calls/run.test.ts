import { describe, expect, it } from 'vitest';
import { heldCalls } from './held-calls.js';
import { heldInWorkers } from './in-workers.js';
import { POLICIES } from './policies.js';
import { rowsOf } from './rows.js';
import { rules } from './rule-base.js';
import { benchCalls } from './run.js';

const WANTED = { calls: 20, seed: 1, wrong: 0.05, cantTell: 1 / 6, visitFactor: 1 };
const held = heldCalls(rules, WANTED);
const rows = rowsOf(held);
const minutes = (policy: string): number => rows.find((row) => row.policy === policy)?.minutes ?? Number.NaN;

describe('twenty calls under each policy', () => {
  it('are the same for the same seed, and others for another', () => {
    const first = rowsOf(held.slice(0, 6 * POLICIES.length));
    expect(benchCalls(rules, { ...WANTED, calls: 6 })).toEqual(first);
    expect(benchCalls(rules, { ...WANTED, calls: 6, seed: 2 })).not.toEqual(first);
  });

  it('are the same calls when they are shared out', () => {
    const parts = [0, 1].flatMap((from) => heldCalls(rules, { ...WANTED, calls: 6, from, every: 2 }));
    const whole = held.slice(0, 6 * POLICIES.length);
    const sorted = (list: typeof held) => list.map((one) => JSON.stringify(one)).sort();
    expect(sorted(parts)).toEqual(sorted(whole));
  });

  it('are the same calls, in the same order, on two threads', async () => {
    const [shared] = await heldInWorkers([{ ...WANTED, calls: 5 }]);
    expect(shared).toEqual(held.slice(0, 5 * POLICIES.length));
  });

  it('meet every policy with the same causes', () => {
    const causes = (policy: string) => held.filter((one) => one.policy === policy).map(({ cause }) => cause);
    for (const { name } of POLICIES) expect(causes(name)).toEqual(causes('ours'));
  });

  it('cost nobody less than somebody who knows the cause, in any call', () => {
    const bound = held.filter(({ policy }) => policy === 'knows the cause');
    for (const { name } of POLICIES) {
      held
        .filter(({ policy }) => policy === name)
        .forEach((one, call) => {
          expect(one.minutes).toBeGreaterThanOrEqual((bound[call]?.minutes ?? Number.NaN) - 1e-9);
        });
    }
  });

  it('cost ours fewer minutes than the list, and than what people do', () => {
    expect(minutes('ours')).toBeLessThan(minutes('list from power up'));
    expect(minutes('ours')).toBeLessThan(minutes('what people do'));
  });

  it('let ours ask and try more before a visit that costs twice, and less before one that costs half', () => {
    const own = (visitFactor: number) => benchCalls(rules, { ...WANTED, visitFactor });
    const [half, twice] = [own(0.5), own(2)];
    expect(half.map(({ policy }) => policy)).toEqual(['ours']);
    expect(half[0]?.remedies).toBeLessThan(twice[0]?.remedies ?? 0);
    expect(half[0]?.visits).toBeGreaterThanOrEqual(twice[0]?.visits ?? 100);
  });
});
