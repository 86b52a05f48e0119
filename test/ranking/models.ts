import fc from 'fast-check';
import type { Evidence } from '../../src/ranking/evidence.js';
import type { FindingModel, Model } from '../../src/ranking/model.js';

/** Shares of each value, by hypothesis in the order of the priors. */
export type Table = Readonly<Record<string, readonly number[]>>;

/** A model laid out from plain numbers. */
export function modelWith(
  priors: Readonly<Record<string, number>>,
  tables: Readonly<Record<string, Table>>,
  groups: Readonly<Record<string, string>> = {},
): Model {
  const findings = Object.entries(tables).map(([id, table]): [string, FindingModel] => [
    id,
    { id, values: Object.keys(table), shares: Object.values(table), group: groups[id] ?? id },
  ]);
  return {
    hypotheses: Object.entries(priors).map(([id, prior]) => ({ id, kind: 'cause', prior })),
    findings: new Map(findings),
  };
}

const weight = fc.double({ min: 0.01, max: 1, noNaN: true });

function shared(weights: readonly number[]): number[] {
  const total = weights.reduce((sum, one) => sum + one, 0);
  return weights.map((one) => one / total);
}

/** A model of a few hypotheses and findings, and one value known of some of the findings. */
export const modelAndEvidence: fc.Arbitrary<{
  readonly model: Model;
  readonly evidence: readonly Evidence[];
}> = fc
  .record({
    priors: fc.array(weight, { minLength: 2, maxLength: 6 }),
    findings: fc.array(
      fc.record({
        values: fc.integer({ min: 2, max: 4 }),
        weights: fc.array(weight, { minLength: 24, maxLength: 24 }),
        shows: fc.nat(3),
        rate: fc.double({ min: 0, max: 0.3, noNaN: true }),
        known: fc.boolean(),
        repeats: fc.boolean(),
      }),
      { maxLength: 6 },
    ),
  })
  .map(({ priors, findings }) => {
    const names = (v: number): string => `v${v}`;
    const tables = findings.map(({ values, weights }, f): [string, Table] => {
      const rows = priors.map((_, h) => shared(weights.slice(h * values, h * values + values)));
      const table = Object.fromEntries(
        Array.from({ length: values }, (_, v) => [names(v), rows.map((row) => row[v] ?? 0)]),
      );
      return [`f${f}`, table];
    });
    const groups = Object.fromEntries(
      findings.flatMap(({ repeats }, f) => (repeats && f > 0 ? [[`f${f}`, 'f0']] : [])),
    );
    const model = modelWith(
      Object.fromEntries(shared(priors).map((prior, h) => [`h${h}`, prior])),
      Object.fromEntries(tables),
      groups,
    );
    const evidence = findings.flatMap(({ known, shows, values, rate }, f) =>
      known ? [{ finding: `f${f}`, value: names(shows % values), errorRate: rate }] : [],
    );
    return { model, evidence };
  });
