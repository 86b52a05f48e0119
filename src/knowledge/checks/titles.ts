import { headingText, isHeading } from '../article.js';
import type { Checked, Found, Known } from './found.js';

/** The title: there is one, first and once, and it is that of the cause's record. */
export function titleFaults({ file, article }: Checked, { causes }: Known): readonly Found[] {
  const title = causes.get(file);
  const [first, ...more] = article.blocks.filter((block) => isHeading(block) && block.level === 1);
  if (first === undefined || !isHeading(first) || headingText(first) === '')
    return [
      title === undefined
        ? { line: 1, says: { id: 'article.no-title' } }
        : { line: 1, says: { id: 'article.no-title-of', with: { line: 1, title } } },
    ];
  const is = headingText(first);
  const found: Found[] = more.map(({ line }) => ({
    line,
    says: { id: 'article.second-title', with: { line } },
  }));
  if (article.blocks[0] !== first)
    found.push({ line: first.line, says: { id: 'article.title-late', with: { line: first.line } } });
  if (title !== undefined && title !== is)
    found.push({
      line: first.line,
      says: { id: 'article.title-differs', with: { line: first.line, is, title } },
    });
  return found;
}
