import { type Dice, diceOf } from '../../../src/call/rehearsal/dice.js';
import type { Sign, Word } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { cause, finding, MANIFEST, oneOf, question, remedy, ruleBase } from '../../ranking/literals.js';
import { startOf, withoutNoise } from './small-start.js';

const SIZE = 5;
const NAMES: readonly number[] = Array.from({ length: SIZE }, (_, at) => at);
/** Minutes of the trade's questions and remedies; common practice, no source. */
const QUESTION_MINUTES = [0.3, 1, 1, 2, 3, 4, 6];
const REMEDY_MINUTES = [2, 4, 5, 8, 10, 15, 20, 40, 45];
const QUESTION_PLACES = ['anywhere', 'anywhere', 'computer', 'cabinet', 'camera'];
const REMEDY_PLACES = ['anywhere', 'computer', 'cabinet', 'camera'];
const CHANCES = ['0.98', '0.95', '0.8', '0.6', '0.5', '0.35'];
/** How often a cause has a sign of its own on a finding. */
const OWN_SIGN = 0.6;

/** Every hundredth as a frequency word of its own. */
const WORDS: Readonly<Record<Word, number>> = Object.fromEntries(
  Array.from({ length: 101 }, (_, at) => [hundredth(at), at / 100]),
);

function hundredth(at: number): Word {
  return (at / 100).toFixed(2).replace(/0$/, '');
}

/** Shares in hundredths that sum to 1, one of them mostly much larger than the others. */
function shares(dice: Dice, count: number): readonly number[] {
  const raw = Array.from({ length: count }, () => dice.number() ** 3 + 0.01);
  const total = raw.reduce((sum, one) => sum + one, 0);
  const parts = raw.slice(1).map((one) => Math.round((100 * one) / total));
  return [100 - parts.reduce((sum, one) => sum + one, 0), ...parts];
}

function valuesOf(count: number): readonly string[] {
  return Array.from({ length: count }, (_, at) => `v${at}`);
}

/**
 * The start of a call on a random small rule base: five causes, five questions that settle a finding of two or
 * three values each, five remedies that mend one or two causes; places as in the tests, the camera up a ladder.
 */
export function randomStart(seed: number): Situation {
  const dice = diceOf(seed);
  const pick = <T>(things: readonly T[], fallback: T): T => dice.oneOf(things) ?? fallback;
  const counts = NAMES.map(() => pick([2, 3], 2));
  const signOf = (count: number): Sign => {
    const parts = shares(dice, count);
    return Object.fromEntries(valuesOf(count).map((value, at) => [value, hundredth(parts[at] ?? 0)]));
  };
  const questions = NAMES.map((at) =>
    question(`q${at}`, {
      answer: oneOf(...valuesOf(counts[at] ?? 2)),
      minutes: pick(QUESTION_MINUTES, 1),
      place: pick(QUESTION_PLACES, 'anywhere'),
    }),
  );
  const findings = NAMES.map((at) => {
    const usual = shares(dice, counts[at] ?? 2);
    return finding(
      `f${at}`,
      `q${at}`,
      Object.fromEntries(usual.map((share, value) => [`v${value}`, share / 100])),
    );
  });
  const causes = NAMES.map((at) => {
    const prior = 5 + 70 * dice.number();
    const own = NAMES.filter(() => dice.falls(OWN_SIGN));
    return cause(`c${at}`, {
      prior,
      signs: Object.fromEntries(own.map((one) => [`f${one}`, signOf(counts[one] ?? 2)])),
    });
  });
  const remedies = NAMES.map((at) => {
    const also = dice.falls(0.5) ? [pick(NAMES, 0)].filter((one) => one !== at) : [];
    return remedy(`r${at}`, {
      minutes: pick(REMEDY_MINUTES, 5),
      place: pick(REMEDY_PLACES, 'anywhere'),
      mends: [at, ...also].map((one) => ({ cause: `c${one}`, chance: pick(CHANCES, '0.8') })),
    });
  });
  const manifest = {
    ...MANIFEST,
    words: WORDS,
    hypotheses: { otherShare: 0.05, nothing: { title: 'Nothing', prior: 5, signs: {} } },
    visit: { labourMinutes: 120, waitDays: 1.5, minutesPerDay: 60 },
  };
  return startOf(withoutNoise(ruleBase({ manifest, questions, findings, causes, remedies })), 'site');
}
