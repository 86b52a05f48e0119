import type { Given, Reckoning, Topic } from '../../../src/arithmetic/topics/topic.js';
import { inWords, type MessageId } from '../../../src/messages/say.js';

/** The sum, its lines in words; a test that gives what cannot be read stops here. */
export function sumOf(topic: Topic, given: Given): Reckoning & { readonly words: readonly string[] } {
  const result = topic.reckon(given);
  if (!result.ok) throw new Error(`${result.input}: ${inWords(result.problem)}`);
  return { ...result.value, words: result.value.lines.map(inWords) };
}

/** Which input is refused, and with which sentence. */
export function refused(topic: Topic, given: Given): readonly [string | undefined, MessageId | undefined] {
  const result = topic.reckon(given);
  return result.ok ? [undefined, undefined] : [result.input, result.problem.id];
}
