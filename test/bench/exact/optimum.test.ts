import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openRemedies } from '../../../src/steps/open-remedies.js';
import { MANIFEST } from '../../ranking/literals.js';
import { published } from '../../ranking/published.js';
import { fewestMinutes } from '../../steps/brute-force.js';
import { type ExactModel, exactModelOf } from './exact-model.js';
import { leastQuestions, surprise } from './huffman.js';
import { optimum } from './optimum.js';
import { randomStart } from './random-model.js';
import { ratioOrderMinutes } from './ratio-order.js';

const visitOf = (labourMinutes: number) => ({
  ...MANIFEST,
  visit: { labourMinutes, waitDays: 0, minutesPerDay: 0 },
});

describe('two causes by hand', () => {
  /** 60 % mended for sure in 10 minutes, 40 % in 20; a question of 2 minutes tells them apart so often. */
  const twoCauses = (right: number, place: string, labour = 100): ExactModel => ({
    priors: [0.6, 0.4],
    questions: [
      {
        id: 'q',
        finding: 'f',
        minutes: 2,
        place,
        values: ['a', 'b'],
        rows: [
          [right, 1 - right],
          [1 - right, right],
        ],
      },
    ],
    remedies: [
      { id: 'a', minutes: 10, place: 'anywhere', mends: [1, 0] },
      { id: 'b', minutes: 20, place: 'anywhere', mends: [0, 1] },
    ],
    manifest: visitOf(labour),
    here: 'site',
  });

  test.each<[string, ExactModel, number]>([
    ['ask, then the right one: 2 + 0.6 × 10 + 0.4 × 20', twoCauses(1, 'anywhere'), 16],
    ['at the cabinet the way eats it: 10 + 0.4 × 20', twoCauses(1, 'cabinet'), 18],
    [
      'told rightly nine times in ten: 2, then the one told first, the other where that was wrong',
      twoCauses(0.9, 'anywhere'),
      2 + 5.8 + 0.04 * 20 + 0.42 * 20 + 0.06 * 10,
    ],
    ['a cheap visit before anything', twoCauses(1, 'anywhere', 5), 5],
  ])('%s', (_, model, minutes) => {
    expect(optimum(model)).toBeCloseTo(minutes, 9);
  });
});

describe('without questions', () => {
  test('is the best order of all, by trying every order and every place to stop', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const start = randomStart(seed);
        const { manifest, ...model } = exactModelOf(start);
        const tries = openRemedies(start).map(({ attempt }) => attempt);
        const fewest = fewestMinutes(start.probabilities, start.here, tries, manifest);
        expect(optimum({ ...model, manifest, questions: [] })).toBeCloseTo(fewest, 9);
      }),
      { numRuns: 20 },
    );
  });

  // Expected cost Σ cᵢ·(1 − Σ pⱼ before i): Heckerman, Breese and Rommelse (1995), from memory; the ratio rule:
  // Kadane and Simon (1977) as restated in arXiv 1203.3502. The numbers of the rows are computed over all orders.
  const repairs = (p: readonly number[], c: readonly number[]): ExactModel => ({
    priors: p,
    questions: [],
    remedies: c.map((minutes, at) => ({
      id: `r${at}`,
      minutes,
      place: 'anywhere',
      mends: p.map((_, h) => (h === at ? 1 : 0)),
    })),
    manifest: visitOf(1e6),
    here: 'site',
  });

  test.each(
    published<readonly { p: readonly number[]; c: readonly number[]; ecr: number }[]>('i-pc-numeric'),
  )('is the published expected cost of Kadane and Simon’s order: $p, $c', ({ p, c, ecr }) => {
    expect(optimum(repairs(p, c))).toBeCloseTo(ecr, 9);
    expect(ratioOrderMinutes(p, c)).toBeCloseTo(ecr, 9);
  });

  test('is the order of falling chance ÷ minutes, as Kadane and Simon (1977) show', () => {
    const pair = fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 60 }));
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 6 }), (pairs) => {
        const total = pairs.reduce((sum, [weight]) => sum + weight, 0);
        const p = pairs.map(([weight]) => weight / total);
        const c = pairs.map(([, minutes]) => minutes);
        expect(optimum(repairs(p, c))).toBeCloseTo(ratioOrderMinutes(p, c), 9);
      }),
    );
  });
});

describe('where every yes-or-no question is there for a minute and a wrong remedy is dear', () => {
  const REMEDY = 1000;
  const askable = (priors: readonly number[]): ExactModel => ({
    priors,
    // Each split of the causes in two once: the last cause always answers no.
    questions: Array.from({ length: 2 ** (priors.length - 1) - 1 }, (_, at) => ({
      id: `q${at}`,
      finding: `f${at}`,
      minutes: 1,
      place: 'anywhere',
      values: ['yes', 'no'],
      rows: [1, 0].map((yes) => priors.map((_, h) => ((((at + 1) >> h) & 1) === yes ? 1 : 0))),
    })),
    remedies: priors.map((_, at) => ({
      id: `r${at}`,
      minutes: REMEDY,
      place: 'anywhere',
      mends: priors.map((_, h) => (h === at ? 1 : 0)),
    })),
    manifest: visitOf(1e6),
    here: 'site',
  });

  // Between H and H + 1 bits, and as many as Huffman's code (1952) has digits: Gill and Wu, Twenty Questions Games
  // Always End With Yes; Dagan and others, Twenty (simple) questions.
  test('the mean number of questions keeps the published entropy bound and is that of Huffman’s code', () => {
    const weights = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(weights, (list) => {
        const p = list.map((one) => one / list.reduce((sum, weight) => sum + weight, 0));
        const questions = optimum(askable(p)) - REMEDY;
        expect(questions).toBeGreaterThanOrEqual(surprise(p) - 1e-9);
        expect(questions).toBeLessThan(surprise(p) + 1);
        expect(questions).toBeCloseTo(leastQuestions(p), 8);
      }),
      { numRuns: 25 },
    );
  });

  // Huffman's code computed by hand.
  test.each([
    [[0.5, 0.25, 0.125, 0.125], 1.75],
    [[1 / 3, 1 / 3, 1 / 3], 5 / 3],
    [[0.9, 0.1], 1],
    [[0.4, 0.3, 0.2, 0.1], 1.9],
  ])('%j takes %d questions', (p, questions) => {
    expect(optimum(askable(p)) - REMEDY).toBeCloseTo(questions, 8);
  });
});
