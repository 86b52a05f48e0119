import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkRuleFolder } from '../../../src/files/load-rules.js';
import { FAULTS, PAIRS } from '../faults/faults.js';
import { isFirstRight, isMended, type Row } from '../run/table.js';
import { runFromMemory } from './from-memory.js';
import type { Remembered } from './remembered.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const remembered = JSON.parse(
  readFileSync(new URL('./remembered.json', import.meta.url), 'utf8'),
) as Remembered;
const ids = Object.keys(remembered.sites);
const rows = await runFromMemory(loaded, remembered, ids, { withNoise: false, held: new Set() });
const singles = rows.filter(({ isPair }) => !isPair);
const share = (some: readonly Row[], is: (row: Row) => boolean): number =>
  some.filter(is).length / some.length;

describe('the lab from memory', () => {
  it('is of every fault that darkens a phone', () => {
    const dark = [...FAULTS, ...PAIRS].filter(({ breaks }) => breaks !== 'computer').map(({ id }) => id);
    expect([...ids].sort()).toEqual([...dark].sort());
  });

  it('knows what is said to every question: where one is new, npm run lab:remember', () => {
    const unknown = loaded.rules.questions.filter(({ id }) => remembered.usual[id] === undefined);
    expect(unknown.map(({ id }) => id)).toEqual([]);
  });

  it('brings the picture back in 95 % of single faults and 85 % of pairs', () => {
    expect(share(singles, isMended)).toBeGreaterThanOrEqual(0.95);
    const pairs = rows.filter(({ isPair }) => isPair);
    expect(share(pairs, isMended)).toBeGreaterThanOrEqual(0.85);
  });

  // The aim is 80 %, and little is between.
  it('tries the right thing first in nearly four of five single faults', () => {
    expect(share(singles, isFirstRight)).toBeGreaterThanOrEqual(0.78);
  });

  it('proposes nothing before its gate is open', () => {
    expect(rows.flatMap(({ call }) => call.gatesBroken)).toEqual([]);
  });

  it('refuses a fault that nothing is written down of', async () => {
    await expect(
      runFromMemory(loaded, remembered, ['never-broken'], { withNoise: false, held: new Set() }),
    ).rejects.toThrow('nothing is written down of never-broken');
  });
});
