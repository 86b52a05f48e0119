import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { modelOf, NOTHING, otherIn } from '../../src/ranking/model.js';
import type { StageDefault } from '../../src/rulebase/records.js';
import { cause, finding, MANIFEST, ruleBase } from './literals.js';

const seen = finding(
  'seen',
  'ask-seen',
  { a: 0.5, b: 0.3, c: 0.2 },
  {
    defaults: [
      { from: 'power', to: 'power', sign: { a: 'seldom' } },
      { from: 'link', to: 'sign-in', side: 'phone', sign: { b: 'mostly' } },
      { from: 'power', to: 'link', sign: { c: 'mostly' } },
    ],
  },
);
const rules = ruleBase({
  manifest: {
    ...MANIFEST,
    hypotheses: {
      otherShare: 0.05,
      nothing: { title: 'Nothing', prior: 20, signs: { seen: { a: 'always' } } },
    },
  },
  findings: [
    seen,
    finding('again', 'ask-again', { a: 0.9, b: 0.1 }, { repeats: { finding: 'seen', agrees: {} } }),
  ],
  causes: [
    cause('own-sign', { stage: 'power', prior: 30, signs: { seen: { b: 'mostly' } } }),
    cause('by-first-default', { stage: 'power', prior: 25 }),
    cause('by-range', { stage: 'link', prior: 15 }),
    cause('by-side', { stage: 'sign-in', prior: 5 }),
    cause('usual', { stage: 'rendezvous', prior: 5 }),
  ],
});

function sharesOf(hypothesis: string, id = 'seen'): readonly number[] {
  const model = modelOf(rules);
  const at = model.hypotheses.findIndex((one) => one.id === hypothesis);
  return (model.findings.get(id)?.shares ?? []).map((row) => row[at] ?? Number.NaN);
}

describe('the shares of a finding', () => {
  // Own sign, else the first default whose stages and side fit, else the usual shares; never two of them mixed.
  test.each([
    [
      'own-sign',
      'its own sign, the rest by usual shares and not by the default',
      [0.2 * (5 / 7), 0.8, 0.2 * (2 / 7)],
    ],
    ['by-first-default', 'the first default that fits its stage', [0.1, 0.9 * 0.6, 0.9 * 0.4]],
    ['by-range', 'the default of a range of stages', [0.2 * (5 / 8), 0.2 * (3 / 8), 0.8]],
    ['by-side', 'the default of its side of the fork', [0.2 * (5 / 7), 0.8, 0.2 * (2 / 7)]],
    ['usual', 'the usual shares: its stage is in range but on the other side', [0.5, 0.3, 0.2]],
    [otherIn('power'), "its stage's default, for what is unnamed", [0.1, 0.9 * 0.6, 0.9 * 0.4]],
    [otherIn('rendezvous'), 'the usual shares, for what is unnamed where nothing fits', [0.5, 0.3, 0.2]],
  ])('of %s are %s', (id, _, wanted) => {
    const shares = sharesOf(id);
    expect(shares.length).toBe(3);
    for (const [v, share] of wanted.entries()) expect(shares[v]).toBeCloseTo(share, 12);
  });

  test('of nothing being wrong are its signs in the manifest, never a stage default', () => {
    const [a = 0, b = 0, c = 0] = sharesOf(NOTHING);
    expect(a).toBeCloseTo(0.98, 12);
    expect(b / c).toBeCloseTo(3 / 2, 9);
    expect(sharesOf(NOTHING, 'again')[0]).toBeCloseTo(0.9, 12);
  });

  test('name the finding they repeat, else stand for themselves', () => {
    const { findings } = modelOf(rules);
    expect(findings.get('again')?.group).toBe('seen');
    expect(findings.get('seen')?.group).toBe('seen');
  });
});

describe('the prior', () => {
  const model = modelOf(rules);
  const prior = (id: string): number => model.hypotheses.find((one) => one.id === id)?.prior ?? Number.NaN;

  test('goes to causes and to nothing by their number in 1,000 calls', () => {
    expect(prior('own-sign')).toBeCloseTo(0.95 * 0.3, 12);
    expect(prior('by-side')).toBeCloseTo(0.95 * 0.05, 12);
    expect(prior(NOTHING)).toBeCloseTo(0.95 * 0.2, 12);
  });

  test('leaves the share of the unnamed to all stages alike', () => {
    const others = model.hypotheses.filter(({ kind }) => kind === 'other');
    expect(others.map(({ id }) => id)).toEqual(MANIFEST.stages.map(({ id }) => otherIn(id)));
    for (const { prior: share } of others) expect(share).toBeCloseTo(0.05 / 4, 12);
  });

  test('sums to 1, and the unnamed have their share of it, whatever the numbers', () => {
    const number = fc.double({ min: 0.01, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(number, { minLength: 1, maxLength: 12 }),
        number,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (priors, nothing, otherShare) => {
          const { hypotheses } = modelOf(
            ruleBase({
              manifest: {
                ...MANIFEST,
                hypotheses: { otherShare, nothing: { title: 'Nothing', prior: nothing, signs: {} } },
              },
              causes: priors.map((prior, i) => cause(`c${i}`, { prior })),
            }),
          );
          const sum = (kind?: string): number =>
            hypotheses.reduce(
              (all, one) => all + (kind === undefined || one.kind === kind ? one.prior : 0),
              0,
            );
          expect(sum()).toBeCloseTo(1, 12);
          expect(sum('other')).toBeCloseTo(otherShare, 12);
        },
      ),
    );
  });
});

test('every row of shares sums to 1 under every hypothesis', () => {
  const range = (from: string, to: string): StageDefault => ({ from, to, sign: { a: 'always' } });
  const model = modelOf({ ...rules, findings: [{ ...seen, defaults: [range('link', 'rendezvous')] }] });
  for (const { shares } of model.findings.values()) {
    for (const [h] of model.hypotheses.entries())
      expect(shares.reduce((sum, row) => sum + (row[h] ?? 0), 0)).toBeCloseTo(1, 12);
  }
});
