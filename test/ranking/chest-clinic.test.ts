import { describe, expect, test } from 'vitest';
import type { Evidence } from '../../src/ranking/evidence.js';
import { posterior } from '../../src/ranking/posterior.js';
import { modelWith, type Table } from './models.js';
import { published } from './published.js';

/**
 * The chest-clinic network of Lauritzen and Spiegelhalter (1988), laid out as eight compound causes: each
 * combination of tuberculosis, lung cancer and bronchitis. The layout is exact, because the four findings are
 * independent given the combination: asia bears on nothing but tub, smoke on nothing but lung and bronc, so
 * P(asia, smoke | tub, lung, bronc) falls into P(asia | tub) x P(smoke | lung, bronc); xray and dysp depend on
 * the combination alone.
 */
interface Tables {
  readonly asia: number;
  readonly smoke: number;
  readonly tub: { readonly asia: number; readonly no: number };
  readonly lung: { readonly smoke: number; readonly no: number };
  readonly bronc: { readonly smoke: number; readonly no: number };
  readonly xray: { readonly either: number; readonly no: number };
  readonly dysp: Readonly<Record<string, number>>;
}

const cpt = published<Tables>('i-asia-cpt');
const at = (share: number, yes: boolean): number => (yes ? share : 1 - share);

const COMBINATIONS = [true, false].flatMap((tub) =>
  [true, false].flatMap((lung) => [true, false].map((bronc) => ({ tub, lung, bronc }))),
);
type Combination = (typeof COMBINATIONS)[number];

function tubGiven(asia: boolean, { tub }: Combination): number {
  return at(asia ? cpt.tub.asia : cpt.tub.no, tub);
}

function lungsGiven(smoke: boolean, { lung, bronc }: Combination): number {
  const key = smoke ? 'smoke' : 'no';
  return at(cpt.lung[key], lung) * at(cpt.bronc[key], bronc);
}

const tubShare = (c: Combination): number =>
  cpt.asia * tubGiven(true, c) + (1 - cpt.asia) * tubGiven(false, c);
const lungsShare = (c: Combination): number =>
  cpt.smoke * lungsGiven(true, c) + (1 - cpt.smoke) * lungsGiven(false, c);

function dyspShare({ tub, lung, bronc }: Combination): number {
  const key = `${tub || lung ? 'either' : '!either'}&${bronc ? 'bronc' : '!bronc'}`;
  return cpt.dysp[key] ?? Number.NaN;
}

function yesNo(share: (c: Combination) => number): Table {
  const yes = COMBINATIONS.map(share);
  return { yes, no: yes.map((one) => 1 - one) };
}

const clinic = modelWith(
  Object.fromEntries(COMBINATIONS.map((c) => [JSON.stringify(c), tubShare(c) * lungsShare(c)])),
  {
    asia: yesNo((c) => (cpt.asia * tubGiven(true, c)) / tubShare(c)),
    smoke: yesNo((c) => (cpt.smoke * lungsGiven(true, c)) / lungsShare(c)),
    xray: yesNo(({ tub, lung }) => (tub || lung ? cpt.xray.either : cpt.xray.no)),
    dysp: yesNo(dyspShare),
  },
);

function chance(p: readonly number[], holds: (c: Combination) => number | boolean): number {
  return COMBINATIONS.reduce((sum, c, h) => sum + (p[h] ?? 0) * Number(holds(c)), 0);
}

/** The chance that a finding shows a value, given what is known already. */
function predicted(known: readonly Evidence[], finding: string, value: string): number {
  const same = known.find((one) => one.finding === finding);
  if (same) return same.value === value ? 1 : 0;
  const layout = clinic.findings.get(finding);
  const row = layout?.shares[layout.values.indexOf(value)] ?? [];
  return posterior(clinic, known).reduce((sum, p, h) => sum + p * (row[h] ?? 0), 0);
}

/** Everything the published rows give: P(evidence) by the chain rule, and the share of each variable's yes. */
function answers(evidence: readonly Evidence[]): Readonly<Record<string, number>> {
  const p = posterior(clinic, evidence);
  return {
    p_evidence: evidence.reduce(
      (product, one, i) => product * predicted(evidence.slice(0, i), one.finding, one.value),
      1,
    ),
    tub: chance(p, ({ tub }) => tub),
    lung: chance(p, ({ lung }) => lung),
    bronc: chance(p, ({ bronc }) => bronc),
    either: chance(p, ({ tub, lung }) => tub || lung),
    asia: predicted(evidence, 'asia', 'yes'),
    smoke: predicted(evidence, 'smoke', 'yes'),
    xray: predicted(evidence, 'xray', 'yes'),
    dysp: predicted(evidence, 'dysp', 'yes'),
  };
}

const shows = (finding: string, value = 'yes'): Evidence => ({ finding, value, errorRate: 0 });

/** `asia,noxray,smoke0`: asia yes, xray no, smoke no. */
function evidenceOf(name: string): readonly Evidence[] {
  if (name === 'prior') return [];
  return name.split(',').map((part) => {
    const id = part.replace(/^no/, '').replace(/0$/, '');
    return shows(id, id === part ? 'yes' : 'no');
  });
}

function agrees(actual: number | undefined, printed: number, digits: number): void {
  expect(Math.abs((actual ?? Number.NaN) - printed)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-12);
}

describe('the chest clinic of Lauritzen and Spiegelhalter (1988)', () => {
  // Marginals and joint: exact decimals in the unit tests and the output of a published program (gRain).
  test('has the published marginals before anything is known', () => {
    const before = answers([]);
    for (const [id, share] of Object.entries(published<Record<string, number>>('i-asia-prior')))
      agrees(before[id], share, 12);
  });

  test('has the published joint of lung and bronchitis', () => {
    const joint = published<Record<string, number>>('i-asia-joint');
    const p = posterior(clinic, []);
    for (const [key, share] of Object.entries(joint)) {
      const holds = (c: Combination): boolean => c.lung === (key[0] === 'y') && c.bronc === (key[1] === 'y');
      agrees(chance(p, holds), share, 12);
    }
  });

  test('gives the published output for asia and dyspnoea', () => {
    const row = published<{ p_evidence: number; lung: number; bronc: number }>('i-asia-post1');
    const after = answers([shows('asia'), shows('dysp')]);
    agrees(after.p_evidence, row.p_evidence, 9);
    agrees(after.lung, row.lung, 8);
    agrees(after.bronc, row.bronc, 7);
  });

  const rows = Object.entries(published<Record<string, Record<string, number>>>('i-asia-enum'));
  // Computed from the published tables by enumeration of all 128 states; nine digits are printed.
  test.each(rows)('gives every enumerated posterior for %s', (name, row) => {
    const after = answers(evidenceOf(name));
    expect(Object.keys(row).length).toBe(9);
    for (const [id, share] of Object.entries(row)) agrees(after[id], share, 9);
  });
});
