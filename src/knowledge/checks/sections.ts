import { headingText, isHeading } from '../article.js';
import { CONFUSED } from '../headings.js';
import type { Block, Inline } from '../page.js';
import { linkedFile } from '../place.js';
import { blocksOf, partsOf, plainOf } from '../plain.js';
import type { Checked, Found, Known } from './found.js';

/** Headings with nothing under them. A deeper heading is something; HTML is not. */
export function emptyFaults({ article }: Checked): readonly Found[] {
  const blocks = article.blocks.filter(saysSomething);
  return blocks.flatMap((block, at): Found[] => {
    if (!isHeading(block)) return [];
    const next = blocks[at + 1];
    if (next !== undefined && (!isHeading(next) || next.level > block.level)) return [];
    const { line } = block;
    return [{ line, says: { id: 'article.section-empty', with: { line, heading: headingText(block) } } }];
  });
}

function saysSomething(block: Block): boolean {
  if (block.kind === 'raw' || block.kind === 'rule') return false;
  return (
    block.kind === 'heading' ||
    plainOf(partsOf([block])).trim() !== '' ||
    blocksOf([block]).some((one) => one.kind === 'code')
  );
}

/** "Often confused with": a list, each item of which begins with a link to the article of another cause. */
export function confusedFaults({ file, place, article }: Checked, { causes }: Known): readonly Found[] {
  if (place.kind !== 'cause') return [];
  const section = article.sections.find(({ heading }) => heading === CONFUSED);
  const content = section?.blocks.filter(saysSomething) ?? [];
  return content.flatMap((block): readonly Found[] => {
    const { line } = block;
    if (block.kind !== 'list') return [{ line, says: { id: 'article.confused-list', with: { line } } }];
    return block.items.flatMap((item) => confusedFault(file, item, line, causes));
  });
}

function confusedFault(
  file: string,
  item: readonly Block[],
  listLine: number,
  causes: Known['causes'],
): readonly Found[] {
  const begins = firstPart(item);
  const line = begins?.line ?? listLine;
  if (begins?.kind !== 'link') return [{ line, says: { id: 'article.confused-no-link', with: { line } } }];
  const target = linkedFile(file, begins.to) ?? '';
  if (target === file) return [{ line, says: { id: 'article.confused-itself', with: { line } } }];
  if (causes.has(target)) return [];
  return [{ line, says: { id: 'article.confused-no-cause', with: { line, to: begins.to } } }];
}

function firstPart(item: readonly Block[]): Inline | undefined {
  const [first] = item;
  return first?.kind === 'paragraph' ? first.parts[0] : undefined;
}

/** A how-to is something to do: it has numbered steps somewhere. */
export function stepFaults({ place, article }: Checked): readonly Found[] {
  if (place.kind !== 'how-to') return [];
  const steps = blocksOf(article.blocks).some((block) => block.kind === 'list' && block.first !== undefined);
  return steps ? [] : [{ line: 1, says: { id: 'article.no-steps' } }];
}
