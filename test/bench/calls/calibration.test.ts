import { describe, expect, it } from 'vitest';
import { rankOf } from '../../cases/rank-of.js';
import { readCases } from '../../cases/read-cases.js';
import { calibrationOf, saidOfCases } from './calibration.js';
import { rules } from './rule-base.js';

const said = (probability: number, right: number, wrong: number) => [
  ...Array.from({ length: right }, () => ({ probability, isRight: true })),
  ...Array.from({ length: wrong }, () => ({ probability, isRight: false })),
];

describe('calibration', () => {
  it('is without error where as many are right as was said', () => {
    expect(calibrationOf([...said(0.75, 3, 1), ...said(0.5, 2, 2)]).error).toBeCloseTo(0, 12);
  });

  it('weighs the gap of each bin by its verdicts', () => {
    // Worked by hand: gaps of 0.45 on 4 and of 0.05 on 12 verdicts.
    const { error, verdicts } = calibrationOf([...said(0.95, 2, 2), ...said(0.2, 3, 9)]);
    expect(verdicts).toBe(16);
    expect(error).toBeCloseTo((4 * 0.45 + 12 * 0.05) / 16, 12);
  });

  it('counts the verdicts of 80 to 90 per cent, and certainty among the last bin', () => {
    const { eighties, bins } = calibrationOf([
      ...said(0.8, 3, 0),
      ...said(0.89, 0, 1),
      ...said(1, 2, 0),
      ...said(0.79, 1, 1),
    ]);
    expect(eighties).toEqual({ verdicts: 4, right: 0.75 });
    expect(bins[9]?.verdicts).toBe(2);
  });

  it('says of a written case what the ranking says', async () => {
    const cases = readCases(rules).filter((_, at) => at % 40 === 0);
    for (const [at, one] of saidOfCases(rules, cases).entries()) {
      const { cause, script } = cases[at] ?? {};
      if (cause === undefined || script === undefined) throw new Error('a case');
      expect(one.isRight).toBe((await rankOf(rules, cause, script.answers)).leader === cause);
    }
  });
});
