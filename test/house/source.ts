import { readdirSync, readFileSync } from 'node:fs';

/** A file of the program: its path from the root, with forward slashes, and its text. */
export interface Source {
  readonly path: string;
  readonly text: string;
}

const ROOT = new URL('../../', import.meta.url);

/** Every TypeScript file below `src/`, sorted by path. */
export function sources(): readonly Source[] {
  const found = readdirSync(new URL('src/', ROOT), { recursive: true, encoding: 'utf8' })
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((path) => /\.tsx?$/.test(path));
  return found.sort().map((path) => ({ path, text: readFileSync(new URL(path, ROOT), 'utf8') }));
}

/** The room a file stands in: the folder below `src/`; empty for a file beside the rooms. */
export function roomOf(path: string): string {
  return /^src\/([^/]+)\//.exec(path)?.[1] ?? '';
}

const BEFORE_REGEX = /(?:^|[([{,;=:!&|?+\-*%<>~}]|=>|\b(?:return|typeof|case|in|of))\s*$/;

/** One piece of code: where a comment, string, template or regular expression starts at `at`, its end; else `at`. */
function endOfPiece(text: string, at: number, before: string): number {
  const end = (pattern: RegExp): number => {
    pattern.lastIndex = at;
    return pattern.test(text) ? pattern.lastIndex : text.length;
  };
  if (text.startsWith('//', at)) return end(/[^\n]*/y);
  if (text.startsWith('/*', at)) return end(/\/\*[\s\S]*?\*\//y);
  const mark = text[at];
  if (mark === "'") return end(/'(?:[^'\\\n]|\\[\s\S])*'/y);
  if (mark === '"') return end(/"(?:[^"\\\n]|\\[\s\S])*"/y);
  // In JSX a slash also ends an element: `</p>`, `<br />`.
  const endsElement = text[at - 1] === '<' || text[at + 1] === '>';
  if (mark === '/' && !endsElement && BEFORE_REGEX.test(before))
    return end(/\/(?:[^/\\[\n]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[a-z]*/y);
  return at;
}

/** The code without comments; with `strings` false also without what stands in quotes and regular expressions. */
export function codeOf(text: string, strings: boolean): string {
  let code = '';
  /** For each template that is open: how many braces are open in the expression we are in; -1 in its text. */
  const templates: number[] = [];
  for (let at = 0; at < text.length; ) {
    const depth = templates.at(-1);
    const letter = text[at] ?? '';
    if (depth === -1) {
      if (letter === '`') templates.pop();
      else if (text.startsWith('${', at)) templates[templates.length - 1] = 0;
      const step = letter === '\\' || text.startsWith('${', at) ? 2 : 1;
      const kept = strings || letter === '`' || (step === 2 && letter === '$');
      code += kept ? text.slice(at, at + step) : ' ';
      at += step;
      continue;
    }
    const end = endOfPiece(text, at, code.slice(-20));
    if (end > at) {
      const piece = text.slice(at, end);
      const comment = piece.startsWith('//') || piece.startsWith('/*');
      code += comment ? ' ' : strings ? piece : `${letter}${letter}`;
      at = end;
      continue;
    }
    if (letter === '`') templates.push(-1);
    if (depth !== undefined && letter === '{') templates[templates.length - 1] = depth + 1;
    if (depth !== undefined && letter === '}') templates[templates.length - 1] = depth - 1;
    code += letter;
    at += 1;
  }
  return code;
}
