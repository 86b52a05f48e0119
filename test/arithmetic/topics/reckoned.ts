import type { Given, Reckoning, Topic } from '../../../src/arithmetic/topics/topic.js';
import { inWords } from '../../../src/messages/say.js';

/** The sum of a topic; a test whose inputs were refused stops here, with the words of the refusal. */
export function reckoned(topic: Topic, given: Given): Reckoning {
  const result = topic.reckon(given);
  if (!result.ok) throw new Error(`${result.input}: ${inWords(result.problem)}`);
  return result.value;
}

/** The input that was refused and the words of the refusal. */
export function refused(topic: Topic, given: Given): readonly [string | undefined, string] {
  const result = topic.reckon(given);
  if (result.ok) throw new Error('was reckoned');
  return [result.input, inWords(result.problem)];
}

/** Every line in words, one text. */
export function said(reckoning: Reckoning): string {
  return reckoning.lines.map(inWords).join('\n');
}
