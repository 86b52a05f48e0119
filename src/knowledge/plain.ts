import type { Block, Inline, Phrase } from './page.js';

/** The words of a phrase on one line, without marks; of a picture, what it shows. */
export function plainOf(parts: Phrase): string {
  return parts
    .map(plainPart)
    .join('')
    .replace(/[ \t\n]+/g, ' ');
}

function plainPart(part: Inline): string {
  switch (part.kind) {
    case 'words':
    case 'code':
      return part.text;
    case 'picture':
      return part.shows;
    case 'break':
      return ' ';
    case 'raw':
      return '';
    default:
      return plainOf(part.parts);
  }
}

/** The phrases that stand directly in blocks, in order, those in lists, quotes and tables included. */
export function phrasesOf(blocks: readonly Block[]): readonly Phrase[] {
  return blocks.flatMap((block): readonly Phrase[] => {
    switch (block.kind) {
      case 'heading':
      case 'paragraph':
        return [block.parts];
      case 'list':
        return block.items.flatMap(phrasesOf);
      case 'quote':
        return phrasesOf(block.blocks);
      case 'table':
        return [...block.head, ...block.rows.flat()];
      default:
        return [];
    }
  });
}

/** Every part of the blocks, however deep. */
export function partsOf(blocks: readonly Block[]): readonly Inline[] {
  const deep = (part: Inline): readonly Inline[] =>
    'parts' in part ? [part, ...part.parts.flatMap(deep)] : [part];
  return phrasesOf(blocks).flat().flatMap(deep);
}

/** Every block, those in lists and quotes included. */
export function blocksOf(blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'list') return [block, ...block.items.flatMap(blocksOf)];
    return block.kind === 'quote' ? [block, ...blocksOf(block.blocks)] : [block];
  });
}
