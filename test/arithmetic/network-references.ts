import { readFileSync } from 'node:fs';
import type { Reference } from './references.js';

const ROWS: readonly Reference[] = JSON.parse(
  readFileSync(new URL('../references/network-and-recording.json', import.meta.url), 'utf8'),
);

/** The value of the one published row with this id. Throws when there is none. */
export function publishedRow<T>(id: string): T {
  const row = ROWS.find((one) => one.id === id);
  if (row === undefined) throw new Error(`no published value ${id}`);
  return row.value as T;
}
