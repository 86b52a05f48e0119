import { readFileSync } from 'node:fs';

/** A published value; `status` says whether it was found on a page or is from memory or computed. */
interface Row {
  readonly id: string;
  readonly value: unknown;
  readonly source_title: string;
  readonly status: 'found' | 'from-memory';
}

const ROWS: readonly Row[] = JSON.parse(
  readFileSync(new URL('../references/diagnosis.json', import.meta.url), 'utf8'),
);

/** The value of the row with this id. Throws when there is none: a test over no rows proves nothing. */
export function published<T>(id: string): T {
  const row = ROWS.find((one) => one.id === id);
  if (row === undefined) throw new Error(`no published value ${id}`);
  return row.value as T;
}
