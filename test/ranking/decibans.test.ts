import { describe, expect, test } from 'vitest';
import { decibans, odds, probabilityOfDecibans } from '../../src/ranking/decibans.js';
import { posterior } from '../../src/ranking/posterior.js';
import { modelWith } from './models.js';
import { published } from './published.js';

// Good, Probability and the Weighing of Evidence (1950), as restated by the sources in references/diagnosis.json.
describe('decibans', () => {
  const table = Object.entries(published<Record<string, number>>('i-deciban-table'));
  test.each(table)('of a ratio of %s', (ratio, db) => {
    expect(decibans(Number(ratio))).toBeCloseTo(db, 4);
  });

  test.each(Object.entries(published<Record<string, number>>('i-db-anchor')))(
    'reach the anchor of a factor of %s',
    (ratio, db) => {
      expect(decibans(Number(ratio))).toBeCloseTo(db, 9);
    },
  );

  test('are a tenth of a ban, which is so many bits and nats', () => {
    const unit = published<{ one_db_factor: number; bits_per_ban: number; nats_per_ban: number }>(
      'i-deciban',
    );
    expect(decibans(unit.one_db_factor)).toBeCloseTo(1, 3);
    expect(decibans(2 ** unit.bits_per_ban)).toBeCloseTo(10, 3);
    expect(decibans(Math.E ** unit.nats_per_ban)).toBeCloseTo(10, 3);
  });

  test("give Good's own example of a factor of 8/3", () => {
    const { example } = published<{ example: { factor: number; db: number } }>('i-good-perceptible');
    expect(decibans(example.factor)).toBeCloseTo(example.db, 2);
  });
});

describe('odds', () => {
  test.each(Object.entries(published<Record<string, number>>('i-db-prob')))(
    'of %s db are this probability, and back',
    (db, probability) => {
      expect(probabilityOfDecibans(Number(db))).toBeCloseTo(probability, 4);
      expect(decibans(odds(probabilityOfDecibans(Number(db))))).toBeCloseTo(Number(db), 9);
    },
  );

  test('stay finite where something is certain', () => {
    expect(decibans(odds(0))).toBeCloseTo(-120, 3);
    expect(decibans(odds(1))).toBeCloseTo(120, 3);
  });
});

test("Bayes' theorem in odds: decibans of independent findings add up", () => {
  const update = published<{ prior: number; lrs: number[]; posterior_db: number; posterior: number }>(
    'i-update',
  );
  const [ten = 0, four = 0] = update.lrs;
  const sum = decibans(odds(update.prior)) + decibans(ten) + decibans(four);
  expect(sum).toBeCloseTo(update.posterior_db, 4);
  const model = modelWith(
    { it: update.prior, not: 1 - update.prior },
    { a: { yes: [0.5, 0.5 / ten], no: [0.5, 1 - 0.5 / ten] }, b: { yes: [0.8, 0.2], no: [0.2, 0.8] } },
  );
  const after = posterior(model, [
    { finding: 'a', value: 'yes', errorRate: 0 },
    { finding: 'b', value: 'yes', errorRate: 0 },
  ]);
  expect(after[0]).toBeCloseTo(update.posterior, 5);
});
