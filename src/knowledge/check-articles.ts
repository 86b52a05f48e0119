import { error, type RuleFault, warning } from '../rulebase/fault.js';
import { fileOf } from '../rulebase/layout.js';
import type { RuleBase } from '../rulebase/records.js';
import { checkArticle, type Known } from './check-article.js';
import { howToFaults } from './checks/how-tos.js';
import { strayFaults } from './checks/strays.js';
import { articleFile, placeOf } from './place.js';

/** A file of `knowledge/`; `file` is its path inside it, with forward slashes. Of a picture no text is needed. */
export interface KnowledgeFile {
  readonly file: string;
  readonly text: string;
}

export type CheckedRules = Pick<RuleBase, 'causes' | 'questions'>;

/**
 * Everything wrong with the articles of a rule base, by file and line. Files of articles are named with
 * `knowledge/` before them. A cause without an article is a warning in its record; all else is an error.
 */
export function checkArticles(rules: CheckedRules, files: readonly KnowledgeFile[]): readonly RuleFault[] {
  const known: Known = {
    files: new Set(files.map(({ file }) => file)),
    causes: new Map(rules.causes.map((cause) => [articleFile(cause), cause.title])),
  };
  const missing = rules.causes
    .filter((cause) => !known.files.has(articleFile(cause)))
    .map((cause) => {
      const article = `knowledge/${articleFile(cause)}`;
      return warning(fileOf('causes', cause.id, cause.stage), '', {
        id: 'article.missing',
        with: { article },
      });
    });
  const within = [...files].sort(byFile).flatMap(({ file, text }) => {
    const place = placeOf(file);
    const stray = strayFaults(file, place, rules.causes, known);
    if (place === undefined || place.kind === 'picture') return stray;
    const found = checkArticle(file, place, text, known);
    return [...stray, ...found.map(({ says }) => error(`knowledge/${file}`, '', says))];
  });
  return [...missing, ...howToFaults(rules.questions, known), ...within];
}

function byFile(a: KnowledgeFile, b: KnowledgeFile): number {
  return a.file < b.file ? -1 : a.file > b.file ? 1 : 0;
}
