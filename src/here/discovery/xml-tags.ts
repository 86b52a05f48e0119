const NAME = String.raw`[A-Za-z_][\w.-]{0,99}(?::[A-Za-z_][\w.-]{0,99})?`;
const BLANK = String.raw`[ \t\r\n]{1,2000}`;
const MAYBE_BLANK = String.raw`[ \t\r\n]{0,2000}`;

const OPEN = new RegExp(`<(${NAME})`, 'y');
const ATTRIBUTE = new RegExp(
  `${BLANK}(${NAME})${MAYBE_BLANK}=${MAYBE_BLANK}(?:"([^"<]{0,9999})"|'([^'<]{0,9999})')`,
  'y',
);
const END = new RegExp(`${MAYBE_BLANK}(/?)>`, 'y');
const CLOSE = new RegExp(`</(${NAME})${MAYBE_BLANK}>`, 'y');

/** A start tag, an end tag, or both in one. */
export interface Tag {
  readonly kind: 'open' | 'close' | 'empty';
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** The place behind it. */
  readonly end: number;
}

const NONE: ReadonlyMap<string, string> = new Map();

/** The tag that begins at a place; undefined where none does, or where it is not well formed. */
export function tagAt(text: string, at: number): Tag | undefined {
  const close = matchAt(CLOSE, text, at);
  if (close !== null) return { kind: 'close', name: close[1] ?? '', attributes: NONE, end: CLOSE.lastIndex };
  const open = matchAt(OPEN, text, at);
  if (open === null) return undefined;
  const attributes = new Map<string, string>();
  let from = OPEN.lastIndex;
  for (;;) {
    const found = matchAt(ATTRIBUTE, text, from);
    if (found === null) break;
    const [, name = '', double, single] = found;
    const value = decoded(double ?? single ?? '');
    if (value === undefined || attributes.has(name)) return undefined;
    attributes.set(name, value);
    from = ATTRIBUTE.lastIndex;
  }
  const end = matchAt(END, text, from);
  if (end === null) return undefined;
  return { kind: end[1] === '/' ? 'empty' : 'open', name: open[1] ?? '', attributes, end: END.lastIndex };
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** The five that need no declaration (XML 1.0, section 4.6). */
const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['&amp;', '&'],
  ['&lt;', '<'],
  ['&gt;', '>'],
  ['&quot;', '"'],
  ['&apos;', "'"],
]);

/** The text with its entities put in; undefined where there is any other. */
export function decoded(text: string): string | undefined {
  if (!text.includes('&')) return text;
  let isKnown = true;
  const plain = text.replace(/&[a-z]{0,4};?/g, (entity) => {
    const character = ENTITIES.get(entity);
    isKnown &&= character !== undefined;
    return character ?? '';
  });
  return isKnown ? plain : undefined;
}
