import { importsOf } from './imports.js';
import { codeOf, roomOf, type Source } from './source.js';

/** Rooms that run in Node only. */
const NODE_ROOMS: ReadonlySet<string> = new Set(['files', 'here', 'cli', 'build']);

/** What only Node has. */
const NODE_WORDS = ['process', 'Buffer', '__dirname', '__filename', 'require', 'global'] as const;
/** What only a page has, and what makes one run differ from the next; the page itself may use both. */
const FACE_WORDS = [
  'console',
  'setTimeout',
  'setInterval',
  'performance',
  'localStorage',
  'document',
  'window',
  'navigator',
  'fetch',
] as const;
/** As above, written as they stand. */
const CLOCK_AND_CHANCE = [
  /\bDate\s*\.\s*now\b/,
  /\bnew\s+Date\b/,
  /\bMath\s*\.\s*random\b/,
  /\brandomUUID\b/,
];

/** Every use of what does not run unchanged in Node and in a browser, or not twice alike. */
export function platformFaults(files: readonly Source[]): readonly string[] {
  return files.flatMap((file) => {
    const room = roomOf(file.path);
    if (NODE_ROOMS.has(room)) return [];
    const code = codeOf(file.text, false);
    const words = room === 'web' ? NODE_WORDS : [...NODE_WORDS, ...FACE_WORDS];
    const patterns = room === 'web' ? [] : CLOCK_AND_CHANCE;
    return [
      ...importsOf(file)
        .filter(({ from }) => from.startsWith('node:'))
        .map(({ from }) => from),
      ...words.filter((word) => uses(code, word)),
      ...patterns.flatMap((pattern) => pattern.exec(code)?.[0] ?? []),
    ].map((found) => `${file.path}: ${found}`);
  });
}

/** As a name of its own or of `globalThis`; a field of that name, as in `question.document`, is another matter. */
function uses(code: string, word: string): boolean {
  const own = new RegExp(`(?<![\\w$.-])${word}(?![\\w$-]|\\??\\s*:(?!:))`);
  return (
    (own.test(code) && !binds(code, word)) || new RegExp(`\\bglobalThis\\s*\\??\\.\\s*${word}\\b`).test(code)
  );
}

/** Whether the file gives the name a meaning of its own, such as a window of time; taking it over is none. */
function binds(code: string, word: string): boolean {
  const name = `(?<![\\w$.])${word}(?![\\w$])`;
  const binding = new RegExp(
    `\\b(?:const|let)\\s*(?:${name}|\\{[^{}]*${name}[^{}]*\\})\\s*=(?!\\s*globalThis\\b)`,
  );
  return binding.test(code);
}
