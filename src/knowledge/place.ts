/** What a file of `knowledge/` is about, as its path says. */
export type Place =
  | { readonly kind: 'cause'; readonly stage: string; readonly id: string }
  | { readonly kind: 'how-to' | 'picture'; readonly id: string };

const ID = '[a-z0-9]+(?:-[a-z0-9]+)*';
const CAUSE = new RegExp(`^causes/(${ID})/(${ID})\\.md$`);
const HOW_TO = new RegExp(`^how-to/(${ID})\\.md$`);
const PICTURE = new RegExp(`^pictures/(${ID})\\.svg$`);

/** Reads a path inside `knowledge/`; `undefined` where nothing belongs there. */
export function placeOf(file: string): Place | undefined {
  const [, stage, cause] = CAUSE.exec(file) ?? [];
  if (stage !== undefined && cause !== undefined) return { kind: 'cause', stage, id: cause };
  const [, howTo] = HOW_TO.exec(file) ?? [];
  if (howTo !== undefined) return { kind: 'how-to', id: howTo };
  const [, picture] = PICTURE.exec(file) ?? [];
  return picture === undefined ? undefined : { kind: 'picture', id: picture };
}

/** Where the article of a cause belongs. */
export function articleFile({ stage, id }: { readonly stage: string; readonly id: string }): string {
  return `causes/${stage}/${id}.md`;
}

/** A link within the articles: relative, to a page or a picture of ours, or to a heading of the same page. */
const RELATIVE = new RegExp(`^(?:(?:\\.\\./|\\./)*(?:${ID}/)*${ID}\\.(?:md|svg)(?:#${ID})?|#${ID})$`);

/** Whether a link is one of ours; no other is ever written into HTML. */
export function isRelative(to: string): boolean {
  return RELATIVE.test(to);
}

/** The file inside `knowledge/` that a relative link in `from` leads to; `undefined` where it leads out of it. */
export function linkedFile(from: string, to: string): string | undefined {
  const path = from.split('/').slice(0, -1);
  const [target = ''] = to.split('#');
  if (target === '') return from;
  for (const step of target.split('/')) {
    if (step === '..') {
      if (path.pop() === undefined) return undefined;
    } else if (step !== '.') path.push(step);
  }
  return path.join('/');
}
