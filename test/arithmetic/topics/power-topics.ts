import { DC_SUPPLY } from '../../../src/arithmetic/topics/dc-supply.js';
import { POE } from '../../../src/arithmetic/topics/poe.js';
import { POE_BUDGET } from '../../../src/arithmetic/topics/poe-budget.js';
import type { Given, Reckoning, Topic } from '../../../src/arithmetic/topics/topic.js';
import { inWords } from '../../../src/messages/say.js';

export const POWER_TOPICS: readonly Topic[] = [POE, POE_BUDGET, DC_SUPPLY];

/** The reckoning, or a test that stops here. */
export function reckoned(topic: Topic, given: Given): Reckoning {
  const result = topic.reckon(given);
  if (!result.ok) throw new Error(`${result.input}: ${inWords(result.problem)}`);
  return result.value;
}

/** All lines in words, one under the other. */
export function wordsOf({ lines }: Reckoning): string {
  return lines.map(inWords).join('\n');
}

/** The input that was refused, and the id of the problem. */
export function refusal(topic: Topic, given: Given): readonly [string | undefined, string] {
  const result = topic.reckon(given);
  return result.ok ? [undefined, 'no problem'] : [result.input, result.problem.id];
}
