import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { type Article, readArticle } from '../../src/knowledge/article.js';
import { SOURCES } from '../../src/knowledge/headings.js';
import type { Block, Inline } from '../../src/knowledge/page.js';

/** Addresses, shares, sums and names of files: nobody reads them as words. */
const FIGURES = /\S*\d\S*|\S+\/\S+/g;

/**
 * The school grade that prose asks for (Kincaid, Fishburne, Rogers and Chissom 1975): 0.39 words a sentence
 * + 11.8 syllables a word - 15.59. A colon and a semicolon end a sentence as well (Flesch 1949, from memory).
 * NaN where there are no words.
 */
export function gradeOf(prose: readonly string[]): number {
  const sentences = prose
    .flatMap((text) => text.replace(FIGURES, ' ').split(/[.?!]+["'\u201d\u2019)]*(?:\s+|$)|[:;]\s+/))
    .map((sentence) => sentence.match(/[A-Za-z][A-Za-z'\u2019]*/g) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  const counts = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return fleschKincaid({ sentence: sentences.length, word: words.length, syllable: counts });
}

/** The prose of an article: paragraphs, steps and quotes; not its headings, code, tables and sources. */
export function proseOf(markdown: string): readonly string[] {
  const { opening, sections }: Article = readArticle(markdown);
  return [
    opening,
    ...sections.filter(({ heading }) => heading !== SOURCES).map(({ blocks }) => blocks),
  ].flatMap((blocks) => blocks.flatMap(proseIn));
}

function proseIn(block: Block): readonly string[] {
  if (block.kind === 'paragraph') return [block.parts.map(spoken).join('')];
  if (block.kind === 'quote') return block.blocks.flatMap(proseIn);
  return block.kind === 'list' ? block.items.flat().flatMap(proseIn) : [];
}

/** Code counts as nothing, a line break as a space. */
function spoken(part: Inline): string {
  if ('parts' in part) return part.parts.map(spoken).join('');
  return part.kind === 'words' ? part.text : ' ';
}
