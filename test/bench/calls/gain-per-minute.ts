import type { Situation } from '../../../src/steps/situation.js';
import { bitsOnCause } from './gains.js';
import { minutesFor, questionsFor, unknownFindings } from './open-findings.js';
import type { Policy } from './policy.js';
import { bestRatio, tryOrGate } from './tries.js';

/** No question takes less. */
const LEAST_MINUTES = 0.2;

/**
 * Information per minute: asks while the best question tells enough about the cause for its minutes, then tries
 * remedies by chance for their minutes. What the answer is worth for the repair it does not ask. `worthAsking`:
 * bits a minute below which nothing more is asked.
 */
export function gainPerMinute(worthAsking: number): Policy {
  return (situation) => {
    const question = mostTelling(situation, worthAsking);
    if (question !== undefined) return { kind: 'ask', question };
    const remedy = bestRatio(situation);
    return remedy ? tryOrGate(remedy) : { kind: 'visit' };
  };
}

function mostTelling(situation: Situation, worthAsking: number): string | undefined {
  let best = { rate: worthAsking, question: undefined as string | undefined };
  const weighed = unknownFindings(situation)
    .map((finding) => ({ finding, gain: bitsOnCause(situation, finding, situation.probabilities) }))
    .sort((a, b) => b.gain - a.gain);
  for (const { finding, gain } of weighed) {
    if (gain / LEAST_MINUTES < best.rate) break;
    const questions = questionsFor(situation, finding);
    const first = questions?.[0];
    if (!questions || !first) continue;
    const told = (1 - situation.rules.manifest.cantTell) ** questions.length;
    const rate = (gain * told) / minutesFor(situation, questions);
    if (rate > best.rate) best = { rate, question: first.id };
  }
  return best.question;
}
