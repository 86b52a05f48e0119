import type { Table } from './page.js';
import { type Look, PLAIN, phraseText, wrapped } from './terminal-phrase.js';

/** Letters and signs one column wide, so that columns can be lined up by counting. */
const COUNTABLE = /^[\u0020-\u024f\u2010-\u2026\u2190-\u2193\u2212\u2264\u2265\u03a9]*$/;

/** A table in columns where it fits, else row by row, each cell after the word at the head of its column. */
export function tableLines(table: Table, look: Look): readonly string[] {
  const [head = [], ...rows] = [table.head, ...table.rows].map((cells) =>
    cells.map((cell) => phraseText(cell, PLAIN).replaceAll('\n', ' ').trim()),
  );
  return inColumns(head, rows, look.width) ?? rowByRow(head, rows, look.width);
}

type Cells = readonly string[];

function inColumns(head: Cells, rows: readonly Cells[], width: number): readonly string[] | undefined {
  const all = [head, ...rows];
  if (!all.flat().every((cell) => COUNTABLE.test(cell))) return undefined;
  const widths = head.map((_, column) => Math.max(1, ...all.map((row) => (row[column] ?? '').length)));
  if (widths.reduce((sum, one) => sum + one + GAP.length, -GAP.length) > width) return undefined;
  const line = (cells: Cells): string =>
    widths
      .map((columns, at) => (cells[at] ?? '').padEnd(columns))
      .join(GAP)
      .trimEnd();
  return [line(head), line(widths.map((columns) => '-'.repeat(columns))), ...rows.map(line)];
}

const GAP = '  ';

function rowByRow(head: Cells, rows: readonly Cells[], width: number): readonly string[] {
  return rows.flatMap((row, at) => [
    ...(at === 0 ? [] : ['']),
    ...row.flatMap((cell, column) => {
      const name = head[column] ?? '';
      if (cell === '') return [];
      return wrapped(name === '' ? cell : `${name}: ${cell}`, width);
    }),
  ]);
}
