import type { Reliability } from '../rulebase/manifest.js';
import type { Question } from '../rulebase/records.js';
import type { Answer, Origin } from './answer.js';

/** Error rate of an answer of this origin to this question, 0 to 1. */
export function errorRate(
  reliability: Reliability,
  question: Question,
  origin: Origin,
  disputed: boolean,
): number {
  if (disputed) return reliability.disputed;
  if (origin !== 'said') return reliability[origin];
  return reliability.said[question.answer.type] ?? reliability.said.number;
}

/** One answer's share in a finding: its error rate, and the paste it came from. */
export interface Leaning {
  readonly rate: number;
  readonly paste?: string;
}

/**
 * Error rate of a finding that rests on several answers: 1 − Π(1 − eᵢ), the chance that at least one of
 * independent answers is wrong. Answers of one paste are wrong together, so a paste counts once, at its worst.
 */
export function combinedErrorRate(leanings: readonly Leaning[]): number {
  const pastes = new Map<string, number>();
  let right = 1;
  for (const { rate, paste } of leanings) {
    if (paste === undefined) right *= 1 - rate;
    else pastes.set(paste, Math.max(rate, pastes.get(paste) ?? 0));
  }
  for (const rate of pastes.values()) right *= 1 - rate;
  return 1 - right;
}

/** What an answer contributes to the error rate of a finding that rests on it. */
export function leaningOf(
  reliability: Reliability,
  question: Question,
  answer: Answer,
  disputed: boolean,
): Leaning {
  const rate = errorRate(reliability, question, answer.origin, disputed);
  return answer.paste === undefined ? { rate } : { rate, paste: answer.paste };
}
