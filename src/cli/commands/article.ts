import { nearestName } from '../../call/nearest-name.js';
import { InputFault } from '../../files/faults.js';
import { articleFiles, builtArticles, readArticleText } from '../../files/load-articles.js';
import { readArticle } from '../../knowledge/article.js';
import { htmlDocument, htmlOf } from '../../knowledge/html.js';
import { type Place, placeOf } from '../../knowledge/place.js';
import { terminalText } from '../../knowledge/terminal.js';
import { printable } from '../../messages/printable.js';
import { say } from '../../messages/say.js';
import type { Options } from '../options.js';
import { lines, paintFor } from '../paint.js';
import { EXIT } from '../run.js';

interface Entry {
  readonly file: string;
  readonly place: Place;
}

/** `whydark article [NAME] [--html | --json]`: one article or how-to; without a name, what there is. */
export async function article(options: Options): Promise<number> {
  const [name, extra] = options.operands;
  if (options.html && options.json) throw new InputFault({ id: 'article.html-or-json' });
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'article', extra } });
  const folder = builtArticles(import.meta.url);
  const entries = articleFiles(folder).flatMap((file): Entry[] => {
    const place = placeOf(file);
    return place === undefined || place.kind === 'picture' ? [] : [{ file, place }];
  });
  const text =
    name === undefined ? listing(folder, entries, options) : opened(folder, found(entries, name), options);
  process.stdout.write(text);
  return EXIT.done;
}

function found(entries: readonly Entry[], name: string): Entry {
  const entry = entries.find(({ place }) => place.id === name);
  if (entry) return entry;
  const meant = nearestName(
    name,
    entries.map(({ place }) => place.id),
  );
  const filling = { name: printable(name, 60) };
  throw new InputFault(
    meant === undefined
      ? { id: 'article.unknown', with: filling }
      : { id: 'article.unknown-near', with: { ...filling, nearest: meant } },
  );
}

function opened(folder: string, { file, place }: Entry, { html, json }: Options): string {
  const markdown = readArticleText(folder, file);
  if (html) return htmlDocument(markdown);
  if (json) {
    const { title } = readArticle(markdown);
    return asJson({ format: 1, ...place, title, markdown, html: htmlOf(markdown) });
  }
  const width = process.stdout.columns;
  const paint = paintFor(process.stdout, process.env);
  return `${terminalText(markdown, { paint, ...(width === undefined ? {} : { width }) })}\n`;
}

function listing(folder: string, entries: readonly Entry[], { html, json }: Options): string {
  if (html) throw new InputFault({ id: 'article.html-one' });
  const listed = entries.map(({ file, place }) => ({
    ...place,
    title: readArticle(readArticleText(folder, file)).title,
  }));
  if (json) return asJson({ format: 1, articles: listed });
  if (listed.length === 0) return `${say('article.none')}\n`;
  const of = (kind: Place['kind'], heading: string): readonly string[] => {
    const own = listed.filter((one) => one.kind === kind);
    const said = own.map(({ id, title }) =>
      lines(say('article.listed', { id, title }), process.stdout.columns, '  '),
    );
    return own.length === 0 ? [] : [heading, ...said, ''];
  };
  const causes = of('cause', say('article.list-causes'));
  const howTos = of('how-to', say('article.list-how-tos'));
  return `${[...causes, ...howTos, say('article.list-how')].join('\n')}\n`;
}

function asJson(report: object): string {
  return `${JSON.stringify(report, null, 2)}\n`;
}
