import { lines } from './paint.js';

const INDENT = '  ';

/** Lines broken to fit; one that stands under another keeps its place, and so does what is broken off it. */
export function foundText(found: readonly string[], columns: number | undefined): string {
  return found
    .map((line) =>
      line.startsWith(INDENT) ? hanging(line.slice(INDENT.length), columns) : lines(line, columns),
    )
    .join('\n');
}

function hanging(text: string, columns: number | undefined): string {
  const [first = '', ...rest] = lines(text, columns, INDENT + INDENT).split('\n');
  return [first.slice(INDENT.length), ...rest].join('\n');
}
