import { readArticle } from './article.js';
import { headingIds } from './heading-ids.js';
import type { Block, Heading, Inline, Phrase } from './page.js';
import { isRelative } from './place.js';

/** Where a relative link or picture is to lead in the HTML; `undefined` leaves only its words. */
export type AddressOf = (to: string) => string | undefined;

interface Pen {
  readonly addressOf: AddressOf;
  readonly ids: ReadonlyMap<Heading, string>;
}

/**
 * A page of markdown as HTML, in one `article` element. All text is escaped, HTML in the markdown is left out,
 * a link that is not relative is only its words; `addressOf` may lead relative ones elsewhere.
 */
export function htmlOf(markdown: string, addressOf: AddressOf = (to) => to): string {
  const { blocks } = readArticle(markdown);
  return `<article>\n${flow(blocks, { addressOf, ids: headingIds(blocks) })}</article>\n`;
}

/** The same as a whole document that a browser opens. */
export function htmlDocument(markdown: string, addressOf?: AddressOf): string {
  const { title } = readArticle(markdown);
  const head = `<meta charset="utf-8">\n<title>${escaped(title)}</title>`;
  const body = `<main>\n${htmlOf(markdown, addressOf)}</main>`;
  return `<!doctype html>\n<html lang="en-GB">\n<head>\n${head}\n</head>\n<body>\n${body}\n</body>\n</html>\n`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (letter) => ESCAPES[letter] ?? '');
}

function flow(blocks: readonly Block[], pen: Pen): string {
  return blocks.map((block) => blockHtml(block, pen)).join('');
}

function blockHtml(block: Block, pen: Pen): string {
  switch (block.kind) {
    case 'heading': {
      const id = pen.ids.get(block);
      const tag = `h${block.level}`;
      return `<${tag}${id === undefined ? '' : ` id="${id}"`}>${phrase(block.parts, pen)}</${tag}>\n`;
    }
    case 'paragraph':
      return wrapped('p', phrase(block.parts, pen));
    case 'list': {
      const items = block.items.map((item) => `<li>${itemHtml(item, block.tight, pen)}</li>\n`).join('');
      if (block.first === undefined) return `<ul>\n${items}</ul>\n`;
      const start = block.first === 1 ? '' : ` start="${block.first}"`;
      return `<ol${start}>\n${items}</ol>\n`;
    }
    case 'quote':
      return `<blockquote>\n${flow(block.blocks, pen)}</blockquote>\n`;
    case 'code':
      return `<pre><code>${escaped(block.text)}\n</code></pre>\n`;
    case 'table': {
      const row = (cells: readonly Phrase[], tag: string): string =>
        `<tr>${cells.map((cell) => `<${tag}>${phrase(cell, pen)}</${tag}>`).join('')}</tr>\n`;
      const head = row(block.head, 'th').replaceAll('<th>', '<th scope="col">');
      const rows = block.rows.map((cells) => row(cells, 'td')).join('');
      return `<table>\n<thead>\n${head}</thead>\n<tbody>\n${rows}</tbody>\n</table>\n`;
    }
    case 'rule':
      return '<hr>\n';
    case 'raw':
      return '';
  }
}

function wrapped(tag: string, inside: string): string {
  return inside.trim() === '' ? '' : `<${tag}>${inside}</${tag}>\n`;
}

/** Of a tight list, the paragraphs lose their own element (CommonMark 0.31.2, section 5.3). */
function itemHtml(item: readonly Block[], tight: boolean, pen: Pen): string {
  return item
    .map((block) =>
      tight && block.kind === 'paragraph' ? phrase(block.parts, pen) : `\n${blockHtml(block, pen)}`,
    )
    .join('');
}

function phrase(parts: Phrase, pen: Pen): string {
  return parts.map((part) => inlineHtml(part, pen)).join('');
}

function inlineHtml(part: Inline, pen: Pen): string {
  switch (part.kind) {
    case 'words':
      return escaped(part.text);
    case 'code':
      return `<code>${escaped(part.text)}</code>`;
    case 'strong':
      return `<strong>${phrase(part.parts, pen)}</strong>`;
    case 'stressed':
      return `<em>${phrase(part.parts, pen)}</em>`;
    case 'link': {
      const to = isRelative(part.to) ? pen.addressOf(part.to) : undefined;
      const inside = phrase(part.parts, pen);
      return to === undefined ? inside : `<a href="${escaped(to)}">${inside}</a>`;
    }
    case 'picture': {
      const from = isRelative(part.from) ? pen.addressOf(part.from) : undefined;
      return from === undefined
        ? escaped(part.shows)
        : `<img src="${escaped(from)}" alt="${escaped(part.shows)}">`;
    }
    case 'break':
      return '<br>\n';
    case 'raw':
      return '';
  }
}
