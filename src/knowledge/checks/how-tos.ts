import { error, type RuleFault } from '../../rulebase/fault.js';
import { fileOf } from '../../rulebase/layout.js';
import type { Question } from '../../rulebase/records.js';
import { placeOf } from '../place.js';
import type { Known } from './found.js';

/** How-tos that no question names, and names of how-tos that are not there; nothing while no question names any. */
export function howToFaults(questions: readonly Question[], { files }: Known): readonly RuleFault[] {
  const named = questions.map((question) => ({ question, ids: namesIn(question) }));
  const all = new Set(named.flatMap(({ ids }) => ids));
  if (all.size === 0) return [];
  const unused = [...files].sort().flatMap((file) => {
    const place = placeOf(file);
    if (place?.kind !== 'how-to' || all.has(place.id)) return [];
    return [error(`knowledge/${file}`, '', { id: 'article.how-to-unused', with: { id: place.id } })];
  });
  const absent = named.flatMap(({ question: { id, stage }, ids }) =>
    ids
      .filter((howTo) => !files.has(`how-to/${howTo}.md`))
      .map((howTo) =>
        error(fileOf('questions', id, stage), '/howTo', { id: 'article.how-to-missing', with: { howTo } }),
      ),
  );
  return [...absent, ...unused];
}

/** The how-tos that a question names in its field `howTo`: one, several, or one for each system. */
function namesIn(question: Question): readonly string[] {
  const texts = (value: unknown): readonly string[] => {
    if (typeof value === 'string') return [value];
    return typeof value === 'object' && value !== null ? Object.values(value).flatMap(texts) : [];
  };
  return 'howTo' in question ? texts(question.howTo) : [];
}
