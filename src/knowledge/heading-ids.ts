import { headingText, isHeading } from './article.js';
import type { Block, Heading } from './page.js';

/** An id for each heading, made of its words; one that is taken already gets a number. */
export function headingIds(blocks: readonly Block[]): ReadonlyMap<Heading, string> {
  const taken = new Set<string>();
  const ids = new Map<Heading, string>();
  for (const heading of blocks.filter(isHeading)) {
    const words = headingText(heading)
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-');
    const plain = words.replace(/^-|-$/g, '') || 'section';
    let id = plain;
    for (let count = 2; taken.has(id); count++) id = `${plain}-${count}`;
    taken.add(id);
    ids.set(heading, id);
  }
  return ids;
}
