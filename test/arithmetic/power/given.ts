import { inWords, type Sentence } from '../../../src/messages/say.js';
import type { Result } from '../../../src/values/result.js';
import {
  CURRENT,
  EXTRA_LOW_VOLTAGE,
  LENGTH,
  POWER,
  TEMPERATURE,
} from '../../../src/values/units/dimension.js';
import { parseRange } from '../../../src/values/units/parse-range.js';
import { parseWire } from '../../../src/values/units/wire.js';

/** The value, or a test that stops here. */
export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(inWords(result.problem));
  return result.value;
}

export const length = (text: string) => must(parseRange(text, LENGTH));
export const voltage = (text: string) => must(parseRange(text, EXTRA_LOW_VOLTAGE));
export const current = (text: string) => must(parseRange(text, CURRENT));
export const power = (text: string) => must(parseRange(text, POWER));
export const temperature = (text: string) => must(parseRange(text, TEMPERATURE));
export const wire = (text: string) => must(parseWire(text));

export function words(lines: readonly Sentence[]): readonly string[] {
  return lines.map(inWords);
}
