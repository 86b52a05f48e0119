/** The first thing wrong in a JSON text: not JSON, a name given twice in one object, or nested too deeply. */
export interface JsonFault {
  readonly at: number;
  readonly what: 'syntax' | 'name-twice' | 'too-deep';
  readonly name?: string;
}

/** Deeper than any record has reason to go, and shallow enough for every walk of ours. */
export const DEEPEST = 64;

const WHITE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\]|\\["\\/bfnrt]|\\u[0-9a-fA-F]{4})*"/y;
const PLAIN = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|true|false|null/y;

/**
 * Finds the first fault of a JSON text (RFC 8259), `undefined` where there is none. Engines word and place their
 * own errors differently, and quietly keep the last of two equal names; hence this reader of our own.
 */
export function jsonFault(text: string): JsonFault | undefined {
  let at = 0;
  const take = (token: RegExp): string | undefined => {
    token.lastIndex = at;
    const found = token.exec(text)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  const takes = (letter: string): boolean => {
    take(WHITE);
    if (text[at] !== letter) return false;
    at++;
    take(WHITE);
    return true;
  };
  const syntax = (): JsonFault => ({ at, what: 'syntax' });
  const string = (): string | undefined => {
    const start = at;
    const found = take(STRING);
    if (found === undefined || !hasControl(found)) return found;
    at = start + controlAt(found);
    return undefined;
  };
  const members = (close: string, one: () => JsonFault | undefined): JsonFault | undefined => {
    if (takes(close)) return undefined;
    for (;;) {
      const fault = one();
      if (fault !== undefined) return fault;
      if (takes(close)) return undefined;
      if (!takes(',')) return syntax();
    }
  };
  const value = (depth: number): JsonFault | undefined => {
    if (depth > DEEPEST) return { at, what: 'too-deep' };
    if (takes('[')) return members(']', () => value(depth + 1));
    if (!takes('{')) {
      take(WHITE);
      return (text[at] === '"' ? string() : take(PLAIN)) === undefined ? syntax() : undefined;
    }
    const names = new Set<string>();
    return members('}', () => {
      const start = at;
      const quoted = string();
      if (quoted === undefined) return syntax();
      const name: string = JSON.parse(quoted);
      if (names.has(name)) return { at: start, what: 'name-twice', name };
      names.add(name);
      return takes(':') ? value(depth + 1) : syntax();
    });
  };
  const fault = value(0);
  if (fault !== undefined) return fault;
  take(WHITE);
  return at < text.length ? syntax() : undefined;
}

function controlAt(text: string): number {
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) < 0x20) return i;
  return -1;
}

function hasControl(text: string): boolean {
  return controlAt(text) >= 0;
}
