import type { AskedQuestion } from '../types.js';
import type { Answer } from './eye.js';
import { numberOf } from './rows.js';

const DATE = /^\d{2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \d{4} \d{2}:\d{2}$/;

/** What is wrong with an answer for its question, in words, or undefined where it fits. */
export function misfit({ id, answer: asks }: AskedQuestion, answer: Answer): string | undefined {
  if (answer.kind === 'cant-tell') return undefined;
  if (answer.kind === 'paste') return answer.text.trim() === '' ? `${id}: an empty text` : undefined;
  const { value } = answer;
  const ids = (asks.choices ?? []).map((choice) => choice.id);
  const fits: Readonly<Record<string, () => boolean>> = {
    'yes-no': () => typeof value === 'boolean',
    choice: () => typeof value === 'string' && ids.includes(value),
    several: () => Array.isArray(value) && value.length > 0 && value.every((one) => ids.includes(one)),
    address: () => typeof value === 'string' && numberOf(value) !== undefined,
    mask: () => typeof value === 'string' && numberOf(value) !== undefined,
    moment: () => typeof value === 'string' && DATE.test(value),
    text: () => typeof value === 'string' && value.trim() !== '',
    number: () => {
      const { min = 0, max = 0 } = asks as { readonly min?: number; readonly max?: number };
      return typeof value === 'number' && value >= min && value <= max;
    },
  };
  return fits[asks.type]?.() === true ? undefined : `${id}: ${JSON.stringify(value)} for a ${asks.type}`;
}
