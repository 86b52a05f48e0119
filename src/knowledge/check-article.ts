import { readArticle } from './article.js';
import type { Checked, Found, Known } from './checks/found.js';
import { headingFaults } from './checks/headings.js';
import { linkFaults } from './checks/links.js';
import { confusedFaults, emptyFaults, stepFaults } from './checks/sections.js';
import { titleFaults } from './checks/titles.js';
import type { Place } from './place.js';

export type { Found, Known } from './checks/found.js';

const CHECKS: readonly ((checked: Checked, known: Known) => readonly Found[])[] = [
  titleFaults,
  headingFaults,
  emptyFaults,
  confusedFaults,
  stepFaults,
  linkFaults,
];

/** Everything wrong in one article or how-to, by line. `file` is its path inside `knowledge/`, read as `place`. */
export function checkArticle(file: string, place: Place, text: string, known: Known): readonly Found[] {
  const checked: Checked = { file, place, article: readArticle(text) };
  return CHECKS.flatMap((check) => check(checked, known)).sort((a, b) => a.line - b.line);
}
