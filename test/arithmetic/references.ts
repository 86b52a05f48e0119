import { readFileSync } from 'node:fs';

/** A published value, with where it was published; `status` says whether it was found or is from memory. */
export interface Reference {
  readonly id: string;
  readonly statement: string;
  readonly value: unknown;
  readonly source_title: string;
  readonly source_locator: string;
  readonly status: 'found' | 'from-memory';
}

const ROWS: readonly Reference[] = ['addresses.json', 'addresses-ipv6.json'].flatMap((file) =>
  JSON.parse(readFileSync(new URL(`../references/${file}`, import.meta.url), 'utf8')),
);

/** The rows whose id begins so. Throws when there is none: a test over no rows proves nothing. */
export function referencesFor(start: string): readonly Reference[] {
  const found = ROWS.filter((row) => row.id.startsWith(start));
  if (found.length === 0) throw new Error(`no published value begins with ${start}`);
  return found;
}

/** The value of the one row with this id. */
export function published<T>(id: string): T {
  const [row] = referencesFor(id).filter((one) => one.id === id);
  if (row === undefined) throw new Error(`no published value ${id}`);
  return row.value as T;
}
