import { type Node, Parser } from 'commonmark';
import { Marked, type Token, type Tokens } from 'marked';

/** Kinds of nodes that plain text is made of. */
const TEXT_KINDS = new Set(['text', 'escape']);

/** What the reference implementation of CommonMark finds: kind and level of every node that is not text. */
export function commonmarkShape(markdown: string): readonly string[] {
  return nodes(markdown)
    .filter(({ type }) => !TEXT_KINDS.has(type))
    .map((node) => (node.type === 'heading' ? `heading ${node.level}` : node.type));
}

/** The text the reference implementation shows. */
export function commonmarkText(markdown: string): string {
  return nodes(markdown)
    .map(({ literal }) => literal ?? '')
    .join('');
}

function nodes(markdown: string): readonly Node[] {
  const walker = new Parser().parse(markdown).walker();
  const found: Node[] = [];
  for (let event = walker.next(); event !== null; event = walker.next()) {
    if (event.entering) found.push(event.node);
  }
  return found;
}

/** What marked, with GFM's tables, strikethrough and autolinks, finds: kind of every token that is not text. */
export function gfmShape(markdown: string): readonly string[] {
  const found: string[] = [];
  const visit = (token: Token): void => {
    if (!TEXT_KINDS.has(token.type)) found.push(token.type === 'list' ? `list ${token.ordered}` : token.type);
    if (token.type === 'list_item' && token.task) found.push('task');
  };
  const marked = new Marked({ gfm: true });
  marked.walkTokens(marked.lexer(markdown), visit);
  return found;
}

/** The tables marked finds, as texts of their cells, heads first. */
export function gfmTables(markdown: string): readonly (readonly (readonly string[])[])[] {
  return new Marked({ gfm: true })
    .lexer(markdown)
    .filter((token): token is Tokens.Table => token.type === 'table')
    .map(({ header, rows }) => [header, ...rows].map((row) => row.map(({ text }) => text)));
}

/** The text marked shows, its HTML taken back. */
export function gfmText(markdown: string): string {
  const html = new Marked({ gfm: true }).parseInline(markdown, { async: false });
  const entities: Record<string, string> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };
  return html.replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => entities[name] ?? '');
}
