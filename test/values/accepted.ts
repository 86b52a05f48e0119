import { inWords } from '../../src/messages/say.js';
import type { Result } from '../../src/values/result.js';

/** The value of a result; a test whose text was refused stops here, with the words of the refusal. */
export function accepted<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(inWords(result.problem));
  return result.value;
}

/** The words of a refusal. */
export function refusal(result: Result<unknown>): string {
  if (result.ok) throw new Error(`was taken as ${JSON.stringify(result.value)}`);
  return inWords(result.problem);
}
