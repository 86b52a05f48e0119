import { headingText } from './article.js';
import type { Block, Heading, List } from './page.js';
import { readPage } from './read-page.js';
import { cut, type Look, PLAIN, phraseText, wrapped } from './terminal-phrase.js';
import { tableLines } from './terminal-table.js';

const NARROWEST = 20;
const WIDEST = 80;

/** Where less than this is left beside a mark, the text stands under it instead. */
const LEAST_ROOM = 10;

/**
 * A page of markdown as text for a terminal, at most `width` columns wide (20 to 80, 80 where nothing is said).
 * Headings are told apart by lines under them, so that it reads the same without colour. HTML and control
 * characters are left out; a picture is what it shows, in words.
 */
export function terminalText(markdown: string, look: Partial<Look> = {}): string {
  return blocksText(readPage(markdown), look);
}

/** The same for some blocks of a page, such as one section. */
export function blocksText(
  blocks: readonly Block[],
  { width = WIDEST, paint = PLAIN }: Partial<Look> = {},
): string {
  const fitting = Math.max(NARROWEST, Math.min(WIDEST, Math.floor(width)));
  return flow(blocks, { width: fitting, paint }, false).join('\n');
}

function flow(blocks: readonly Block[], look: Look, tight: boolean): readonly string[] {
  const drawn = blocks.map((block) => blockLines(block, look)).filter((lines) => lines.length > 0);
  return drawn.flatMap((lines, at) => (at === 0 || tight ? lines : ['', ...lines]));
}

function blockLines(block: Block, look: Look): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return headingLines(block, look);
    case 'paragraph':
      return filled(wrapped(phraseText(block.parts, look.paint), look.width));
    case 'list':
      return listLines(block, look);
    case 'quote':
      return hung('> ', '> ', look, (narrower) => flow(block.blocks, narrower, false));
    case 'code':
      return hung('    ', '    ', look, ({ width }) => cut(block.text, width));
    case 'table':
      return tableLines(block, look);
    case 'rule':
      return ['-'.repeat(Math.min(look.width, LEAST_ROOM))];
    case 'raw':
      return [];
  }
}

/** Nothing where there are no words at all. */
function filled(lines: readonly string[]): readonly string[] {
  return lines.some((line) => line.trim() !== '') ? lines : [];
}

function headingLines(heading: Heading, { width, paint }: Look): readonly string[] {
  const text = headingText(heading);
  const lines = filled(wrapped(heading.level > 2 ? `-- ${text}` : text, width));
  const longest = Math.max(0, ...lines.map((line) => [...line].length));
  const under = heading.level > 2 ? [] : [(heading.level === 1 ? '=' : '-').repeat(Math.min(width, longest))];
  return lines.length === 0 ? [] : [...lines.map((line) => paint('bold', line)), ...under];
}

function listLines({ first, items, tight }: List, look: Look): readonly string[] {
  return items.flatMap((item, at) => {
    const mark = first === undefined ? '- ' : `${first + at}. `;
    const lines = hung(mark, ' '.repeat(mark.length), look, (narrower) => flow(item, narrower, tight));
    return at === 0 || tight ? lines : ['', ...lines];
  });
}

/** Lines beside a mark; under it, at full width, where too little room is left. */
function hung(
  first: string,
  rest: string,
  look: Look,
  draw: (narrower: Look) => readonly string[],
): readonly string[] {
  const room = look.width - first.length;
  if (room < LEAST_ROOM) return [first.trimEnd(), ...draw(look)].filter((line) => line !== '');
  const lines = draw({ ...look, width: room });
  return (lines.length === 0 ? [''] : lines).map((line, at) => `${at === 0 ? first : rest}${line}`.trimEnd());
}
