import type { Question, RuleBase } from '../rulebase/records.js';

/** The questions whose title or prompt holds all of these words, those with them in the title first; none for no word. */
export function questionsWith(
  { questions }: Pick<RuleBase, 'questions'>,
  words: string,
): readonly Question[] {
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (wanted.length === 0) return [];
  const holds = (text: string): boolean => wanted.every((word) => text.toLowerCase().includes(word));
  const inTitle = questions.filter(({ title }) => holds(title));
  const elsewhere = questions.filter((one) => !inTitle.includes(one) && holds(`${one.title} ${one.prompt}`));
  return [...inTitle, ...elsewhere];
}
