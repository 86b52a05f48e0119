import { expect, test } from 'vitest';
import type { LabCall } from './lab-call.js';
import { firstRightByFrequency, type Row } from './table.js';

const row = (cause: string, mends: boolean, over: Partial<Row> = {}): Row => ({
  ...{ fault: cause, title: cause, noisy: false, isPair: false, isHeldBack: false, seconds: 1 },
  call: {
    causes: [cause],
    tried: [{ remedy: 'any', rank: 1, mends, standing: '' }],
    visitTried: [],
  } as Partial<LabCall> as LabCall,
  ...over,
});
const CAUSES = [
  { id: 'hung', prior: 50 },
  { id: 'used-up', prior: 10 },
];

test('the first remedy of a frequent cause counts for more, and two faults of one cause share it', () => {
  expect(firstRightByFrequency([row('hung', true), row('used-up', false)], CAUSES)).toBeCloseTo(50 / 60);
  const shared = [row('hung', true), row('hung', false), row('used-up', true)];
  expect(firstRightByFrequency(shared, CAUSES)).toBeCloseTo(35 / 60);
});

test('neither pairs nor calls with mistakes are in it', () => {
  const others = [row('hung', false, { isPair: true }), row('hung', false, { noisy: true })];
  expect(firstRightByFrequency([row('hung', true), ...others], CAUSES)).toBe(1);
});
