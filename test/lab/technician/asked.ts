import { readFileSync } from 'node:fs';
import type { AskedQuestion } from '../types.js';

/** The questions as the program prints them, kept beside the eyes so that they can be tried without a build. */
export const ASKED: readonly AskedQuestion[] = JSON.parse(
  readFileSync(new URL('./asked.json', import.meta.url), 'utf8'),
);

export function asked(id: string): AskedQuestion {
  const found = ASKED.find((question) => question.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}
