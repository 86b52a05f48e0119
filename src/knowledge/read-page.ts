import { Marked, type MarkedToken, type Token, type Tokens } from 'marked';
import { withoutControls } from './characters.js';
import type { Block, List, Table } from './page.js';
import { linesDown, placed, readPhrase } from './read-phrase.js';

/** An address that only stands there, such as one to type into a browser, is text and no link. */
const MARKED = new Marked({ gfm: true, tokenizer: { url: () => undefined } });

/** The blocks of a page of markdown (CommonMark with the tables of GFM). Control characters are left out. */
export function readPage(markdown: string): readonly Block[] {
  const text = withoutControls(markdown.replace(/\r\n?/g, '\n'));
  return readBlocks(MARKED.lexer(text), 1);
}

function readBlocks(tokens: readonly Token[], line: number): readonly Block[] {
  return placed(tokens, line).flatMap(({ token, line: at }) => block(token, at));
}

function block(token: MarkedToken, line: number): readonly Block[] {
  switch (token.type) {
    case 'heading':
      return [{ kind: 'heading', level: token.depth, parts: readPhrase(token.tokens, line), line }];
    case 'paragraph':
    case 'text':
      return [{ kind: 'paragraph', parts: readPhrase(token.tokens ?? [], line), line }];
    case 'list':
      return [list(token as Tokens.List, line)];
    case 'blockquote':
      return [{ kind: 'quote', blocks: readBlocks(token.tokens ?? [], line), line }];
    case 'code':
      return [{ kind: 'code', text: token.text.replace(/\n$/, ''), line }];
    case 'table':
      return [table(token as Tokens.Table, line)];
    case 'hr':
      return [{ kind: 'rule', line }];
    case 'html':
      return [{ kind: 'raw', text: token.text, line }];
    default:
      return [];
  }
}

function list({ items, ordered, start, loose }: Tokens.List, line: number): List {
  let at = line;
  const read = items.map((item) => {
    const begins = at;
    at += linesDown(item.raw);
    return readBlocks(item.tokens, begins);
  });
  const first = ordered ? { first: start === '' ? 1 : start } : {};
  return { kind: 'list', ...first, tight: !loose, items: read, line };
}

/** Under the head stands the row of dashes, so the rows begin two lines further down. */
function table({ header, rows }: Tokens.Table, line: number): Table {
  return {
    kind: 'table',
    head: header.map(({ tokens }) => readPhrase(tokens, line)),
    rows: rows.map((row, at) => row.map(({ tokens }) => readPhrase(tokens, line + 2 + at))),
    line,
  };
}
