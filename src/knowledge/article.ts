import type { Block, Heading } from './page.js';
import { plainOf } from './plain.js';
import { readPage } from './read-page.js';

/** What stands under one heading of the second rank. */
export interface Section {
  readonly heading: string;
  readonly line: number;
  readonly blocks: readonly Block[];
}

/** An article or a how-to, taken apart. */
export interface Article {
  /** Empty where there is none. */
  readonly title: string;
  /** What stands between the title and the first section. */
  readonly opening: readonly Block[];
  readonly sections: readonly Section[];
  /** All of it, in order. */
  readonly blocks: readonly Block[];
}

/** Takes an article apart at its headings. Never throws; `checkArticle` says what is wrong with it. */
export function readArticle(markdown: string): Article {
  const blocks = readPage(markdown);
  const starts = blocks.flatMap((block, at) =>
    isHeading(block) && block.level === 2 ? [{ block, at }] : [],
  );
  const title = blocks.find((block) => isHeading(block) && block.level === 1);
  return {
    title: title === undefined || !isHeading(title) ? '' : headingText(title),
    opening: blocks.slice(0, starts[0]?.at).filter((block) => block !== title),
    sections: starts.map(({ block, at }, index) => ({
      heading: headingText(block),
      line: block.line,
      blocks: blocks.slice(at + 1, starts[index + 1]?.at),
    })),
    blocks,
  };
}

export function isHeading(block: Block): block is Heading {
  return block.kind === 'heading';
}

export function headingText({ parts }: Heading): string {
  return plainOf(parts).trim();
}
