import { describe, expect, test } from 'vitest';
import { joined } from './hold-on.js';
import type { LabCall } from './lab-call.js';
import { isFirstRight, isMendedByVisit } from './table.js';

const CALL: LabCall = {
  causes: ['mask-wrong', 'dns-dead'],
  closed: 'visit',
  isBack: false,
  defects: [],
  leader: 'mask-wrong',
  probability: 0.4,
  finalRank: 4,
  tried: [],
  wrong: 0,
  questions: 40,
  minutes: 250.4,
  visits: 1,
  visitTried: [
    { remedy: 'correct-gateway', mends: false },
    { remedy: 'correct-mask', mends: true },
  ],
  gatesBroken: [],
};
const ON_SITE: LabCall = {
  ...CALL,
  closed: 'picture-back',
  isBack: true,
  tried: [{ remedy: 'correct-dns', rank: 1, mends: true, standing: '' }],
  questions: 20,
  minutes: 30.3,
  visits: 0,
  visitTried: [],
  gatesBroken: ['restart-router'],
};

const row = (call: LabCall) => ({
  ...{ fault: 'mask+dns', title: 'two faults', noisy: false, isPair: true, isHeldBack: false },
  ...{ call, seconds: 1 },
});

describe('a call, and one more by whoever was sent', () => {
  const both = joined(CALL, ON_SITE);

  test('counts as mended by the visit, with what both took', () => {
    expect(isMendedByVisit(row(both))).toBe(true);
    expect(both).toMatchObject({ questions: 60, minutes: 280.7, visits: 1, closed: 'visit' });
    expect(both.visitTried.map(({ remedy }) => remedy)).toEqual([
      ...['correct-gateway', 'correct-mask', 'correct-dns'],
    ]);
  });

  test('is not mended where the picture is still not there', () => {
    expect(isMendedByVisit(row(joined(CALL, { ...ON_SITE, isBack: false })))).toBe(false);
  });

  test('has its first remedy from the first of the two, and forgets no gate that was broken', () => {
    expect(isFirstRight(row(both))).toBe(false);
    expect(both.gatesBroken).toEqual(['restart-router']);
  });
});
