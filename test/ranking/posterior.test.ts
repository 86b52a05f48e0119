import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blur } from '../../src/ranking/blur.js';
import { type Evidence, likelihoods, withoutRepeats } from '../../src/ranking/evidence.js';
import type { Model } from '../../src/ranking/model.js';
import { normalised, posterior } from '../../src/ranking/posterior.js';
import { modelAndEvidence, modelWith } from './models.js';

/** Bayes' theorem written out: products instead of logs, the first known of each group by its place. */
function byHand(model: Model, evidence: readonly Evidence[]): readonly number[] {
  const ids = [...model.findings.keys()];
  const counted = new Map<string, Evidence>();
  for (const id of ids) {
    const one = evidence.find(({ finding }) => finding === id);
    const group = model.findings.get(id)?.group ?? id;
    if (one && !counted.has(group)) counted.set(group, one);
  }
  const weights = model.hypotheses.map(({ prior }, h) =>
    [...counted.values()].reduce((product, { finding, value, errorRate }) => {
      const layout = model.findings.get(finding);
      const share = layout?.shares[layout.values.indexOf(value)]?.[h] ?? Number.NaN;
      return product * blur(share, errorRate, layout?.values.length ?? 2);
    }, prior),
  );
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

const coin = modelWith(
  { a: 0.5, b: 0.3, c: 0.2 },
  {
    first: { yes: [0.9, 0.5, 0.1], no: [0.1, 0.5, 0.9] },
    second: { yes: [0.2, 0.7, 0.6], no: [0.8, 0.3, 0.4] },
  },
);
const yes: Evidence = { finding: 'first', value: 'yes', errorRate: 0 };
const no: Evidence = { finding: 'second', value: 'no', errorRate: 0.05 };

describe('posterior', () => {
  test("is Bayes' theorem, whatever the model", () => {
    fc.assert(
      fc.property(modelAndEvidence, ({ model, evidence }) => {
        const p = posterior(model, evidence);
        for (const [h, share] of byHand(model, evidence).entries()) expect(p[h]).toBeCloseTo(share, 10);
        expect(p.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('does not depend on the order of the evidence, to the last bit', () => {
    const shuffled = modelAndEvidence.chain(({ model, evidence }) =>
      fc
        .shuffledSubarray([...evidence], { minLength: evidence.length })
        .map((other) => ({ model, evidence, other })),
    );
    fc.assert(
      fc.property(shuffled, ({ model, evidence, other }) => {
        expect(posterior(model, other)).toEqual(posterior(model, evidence));
      }),
    );
  });

  test('without evidence is the prior', () => {
    expect(posterior(coin, []).map((p) => Number(p.toFixed(12)))).toEqual([0.5, 0.3, 0.2]);
  });

  test('findings and values unknown to the model say nothing', () => {
    const before = posterior(coin, [yes]);
    const odd = [
      { finding: 'third', value: 'yes', errorRate: 0 },
      { finding: 'second', value: 'perhaps', errorRate: 0 },
    ];
    expect(posterior(coin, [yes, ...odd])).toEqual(before);
    expect(likelihoods(coin, { finding: 'third', value: 'yes', errorRate: 0 })).toBeUndefined();
  });

  test('factors of tried remedies weigh in', () => {
    const [a = 0, b = 0, c = 0] = posterior(coin, [yes], new Map([['a', 0.5]]));
    const whole = 0.5 * 0.5 * 0.9 + 0.3 * 0.5 + 0.2 * 0.1;
    expect(a).toBeCloseTo((0.5 * 0.5 * 0.9) / whole, 12);
    expect(b).toBeCloseTo((0.3 * 0.5) / whole, 12);
    expect(c).toBeCloseTo((0.2 * 0.1) / whole, 12);
  });

  test('a struck cause has nothing left', () => {
    expect(posterior(coin, [yes], new Map([['a', 0]]))[0]).toBe(0);
  });

  test('with every cause struck the factors are left out', () => {
    const all = new Map([
      ['a', 0],
      ['b', 0],
      ['c', 0],
    ]);
    expect(posterior(coin, [yes, no], all)).toEqual(posterior(coin, [yes, no]));
  });

  test('stays finite under evidence that would underflow a product', () => {
    const tables = Object.fromEntries(
      Array.from({ length: 400 }, (_, i) => [`f${i}`, { yes: [0.001, 0.002], no: [0.999, 0.998] }]),
    );
    const model = modelWith({ a: 0.5, b: 0.5 }, tables);
    const evidence = Object.keys(tables).map((finding) => ({ finding, value: 'yes', errorRate: 0 }));
    expect(posterior(model, evidence)[1]).toBeCloseTo(1, 12);
  });
});

describe('a cause that comes and goes', () => {
  const chance = fc.double({ min: 0.01, max: 0.99, noNaN: true });
  /** `loose` is away half of the time; `cut` says nothing of that; the third is that nothing is wrong. */
  const withAbsence = (page: readonly number[], sound: readonly number[], away: number): Model => {
    const rows = (shares: readonly number[]) => ({ yes: shares, no: shares.map((one) => 1 - one) });
    const model = modelWith(
      { loose: 0.4, cut: 0.4, 'nothing-is-wrong-now': 0.2 },
      { page: rows(page), sound: rows(sound), phase: rows([away, 0.05, 0.35]) },
    );
    return {
      ...model,
      hypotheses: model.hypotheses.map((one) =>
        one.id === 'nothing-is-wrong-now' ? { ...one, kind: 'nothing' } : one,
      ),
      absence: { finding: 'phase', shares: [away, 0, 0], momentary: new Set(['page']) },
    };
  };
  const shows = (finding: string): Evidence => ({ finding, value: 'yes', errorRate: 0 });

  test('is weighed by the law of total probability while it is not known whether it is there', () => {
    fc.assert(
      fc.property(chance, chance, chance, chance, chance, (a, b, c, s, away) => {
        const p = posterior(withAbsence([a, b, c], [s, s, s], away), [shows('page'), shows('sound')]);
        const weights = [0.4 * ((1 - away) * a + away * c), 0.4 * b, 0.2 * c];
        const whole = weights.reduce((sum, one) => sum + one, 0);
        for (const [h, weight] of weights.entries()) expect(p[h]).toBeCloseTo(weight / whole, 10);
      }),
    );
  });

  test('is weighed as it is once that is known', () => {
    const model = withAbsence([0.1, 0.1, 0.9], [0.5, 0.5, 0.5], 0.5);
    const { absence: _, ...without } = model;
    const known = [shows('page'), { finding: 'phase', value: 'no', errorRate: 0 }];
    expect(posterior(model, known)).toEqual(posterior(without, known));
  });

  test('loses nothing to what lasts: that is seen whether it is there or not', () => {
    const model = withAbsence([0.1, 0.1, 0.9], [0.2, 0.8, 0.5], 0.5);
    const [loose = 0, cut = 0] = posterior(model, [shows('sound')]);
    expect(loose / cut).toBeCloseTo(0.2 / 0.8, 12);
  });
});

test('normalised brings logs to shares of 1', () => {
  const [a, b, c] = normalised([Math.log(3), Math.log(1), Number.NEGATIVE_INFINITY]);
  expect(a).toBeCloseTo(0.75, 12);
  expect(b).toBeCloseTo(0.25, 12);
  expect(c).toBe(0);
});

describe('findings that repeat another', () => {
  const table = { yes: [0.9, 0.1], no: [0.1, 0.9] };
  const model = modelWith(
    { a: 0.5, b: 0.5 },
    { light: table, lamp: table, beam: table, own: table },
    { lamp: 'light', beam: 'light' },
  );
  const shows = (finding: string): Evidence => ({ finding, value: 'yes', errorRate: 0 });

  test('stand back while the repeated one is known', () => {
    const { counted, repeats } = withoutRepeats(model, ['own', 'lamp', 'light', 'beam'].map(shows));
    expect(counted.map(({ finding }) => finding)).toEqual(['light', 'own']);
    expect(repeats.map(({ evidence, counted: by }) => [evidence.finding, by])).toEqual([
      ['beam', 'light'],
      ['lamp', 'light'],
    ]);
  });

  test('count by id, the first of them only, while the repeated one is not known', () => {
    const { counted, repeats } = withoutRepeats(model, ['lamp', 'beam'].map(shows));
    expect(counted.map(({ finding }) => finding)).toEqual(['beam']);
    expect(repeats.map(({ evidence, counted: by }) => [evidence.finding, by])).toEqual([['lamp', 'beam']]);
  });

  test('add nothing to the weight of the one that counts', () => {
    expect(posterior(model, ['light', 'lamp', 'beam'].map(shows))[0]).toBeCloseTo(0.9, 12);
  });
});
