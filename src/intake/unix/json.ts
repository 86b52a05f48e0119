import type { Line } from '../parser.js';

/** A value of JSON with the line that it stands on; an object is a list of its keys and values. */
export type Json =
  | { readonly kind: 'plain'; readonly value: string | number | boolean | null; readonly line: number }
  | { readonly kind: 'list'; readonly items: readonly Json[]; readonly line: number }
  | { readonly kind: 'object'; readonly entries: ReadonlyMap<string, Json>; readonly line: number };

export interface ReadJson {
  readonly value: Json;
  readonly lines: ReadonlySet<number>;
}

interface Token {
  readonly text: string;
  readonly line: number;
}

const TOKEN = /\s*([{}[\],:]|"(?:[^"\\]|\\.)*"|true\b|false\b|null\b|-?\d[0-9.eE+-]{0,40})/y;
const DEEPEST = 12;

/**
 * Reads the JSON that begins on a line. Text that breaks off gives what was read before; a line that is none ends it,
 * and so does one that begins the next output.
 */
export function readJson(lines: readonly Line[], from: number): ReadJson | undefined {
  const understood = new Set<number>();
  const tokens = tokensOf(lines, from, understood);
  let held: Token | undefined;
  const next = (): Token | undefined => {
    const token = held ?? tokens.next().value ?? undefined;
    held = undefined;
    return token;
  };
  const value = readValue(0);
  return value === undefined ? undefined : { value, lines: understood };

  function readValue(depth: number): Json | undefined {
    const token = next();
    if (token === undefined || depth > DEEPEST) return undefined;
    const { line } = token;
    if (token.text === '[') {
      const items: Json[] = [];
      readParts(']', () => {
        const item = readValue(depth + 1);
        if (item !== undefined) items.push(item);
        return item !== undefined;
      });
      return { kind: 'list', items, line };
    }
    if (token.text === '{') {
      const entries = new Map<string, Json>();
      readParts('}', () => readEntry(entries, depth));
      return { kind: 'object', entries, line };
    }
    const plain = plainOf(token.text);
    return plain === undefined ? undefined : { kind: 'plain', value: plain, line };
  }

  function readEntry(entries: Map<string, Json>, depth: number): boolean {
    const key = plainOf(next()?.text ?? '');
    if (typeof key !== 'string' || next()?.text !== ':') return false;
    const value = readValue(depth + 1);
    if (value !== undefined) entries.set(key, value);
    return value !== undefined;
  }

  function readParts(end: string, part: () => boolean): void {
    for (;;) {
      const token = next();
      if (token === undefined || token.text === end) return;
      if (token.text !== ',') held = token;
      if (token.text !== ',' && !part()) return;
    }
  }
}

function* tokensOf(
  lines: readonly Line[],
  from: number,
  understood: Set<number>,
): Generator<Token, undefined> {
  for (let index = from; index < lines.length; index++) {
    const line = lines[index];
    if (line === undefined || (index > from && line.text.startsWith('['))) return;
    let at = 0;
    while (at < line.text.length) {
      TOKEN.lastIndex = at;
      const text = TOKEN.exec(line.text)?.[1];
      if (text === undefined) return;
      at = TOKEN.lastIndex;
      understood.add(line.number);
      yield { text, line: line.number };
    }
  }
}

function plainOf(text: string): string | number | boolean | null | undefined {
  if (!/^["tfn\d-]/.test(text)) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    const isPlain = value === null || ['string', 'number', 'boolean'].includes(typeof value);
    return isPlain ? (value as string | number | boolean | null) : undefined;
  } catch {
    return undefined;
  }
}
