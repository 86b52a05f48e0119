import { readFileSync } from 'node:fs';

/** A published value about power or copper, with where it was published; `status` says whether from memory. */
export interface PowerReference<T> {
  readonly id: string;
  readonly statement: string;
  readonly value: T;
  readonly source_title: string;
  readonly source_locator: string;
  readonly status: 'found' | 'from-memory';
}

const ROWS: readonly PowerReference<unknown>[] = JSON.parse(
  readFileSync(new URL('../../references/power.json', import.meta.url), 'utf8'),
);

/** The rows whose id begins so. Throws when there is none: a test over no rows proves nothing. */
export function powerRows<T>(start: string): readonly PowerReference<T>[] {
  const found = ROWS.filter((row) => row.id.startsWith(start));
  if (found.length === 0) throw new Error(`no published value begins with ${start}`);
  return found as readonly PowerReference<T>[];
}

/** The value of the one row with this id. */
export function powerRow<T>(id: string): T {
  const row = powerRows<T>(id).find((one) => one.id === id);
  if (row === undefined) throw new Error(`no published value ${id}`);
  return row.value;
}
