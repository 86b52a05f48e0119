import { readRecordBytes } from '../call/record/read-record.js';
import { VERSION } from '../call/version.js';

/** An unfinished call that this browser keeps. */
export interface Kept {
  readonly id: string;
  /** ISO 8601 in UTC. */
  readonly opened: string;
  readonly entries: number;
}

/** Keeps calls in the browser until they are closed. */
export interface Keeper {
  /** Gives false where the browser keeps nothing: storage is refused, or full. */
  readonly write: (id: string, record: string) => boolean;
  readonly read: (id: string) => string | undefined;
  readonly forget: (id: string) => void;
  /** All that are kept and can be read, the last opened first. */
  readonly list: () => readonly Kept[];
  /** Tells when another tab or window writes a call. */
  readonly watch: (changed: (id: string) => void) => void;
}

const NAME = 'whydark.call.';

/** Keeps in `localStorage`; in nothing at all where the browser refuses it. */
export function keeperIn(page: Window): Keeper {
  const storage = storageOf(page);
  return {
    write: (id, record) => tried(() => storage?.setItem(NAME + id, record), storage !== undefined),
    read: (id) => storage?.getItem(NAME + id) ?? undefined,
    forget: (id) => void tried(() => storage?.removeItem(NAME + id), true),
    list: () => (storage === undefined ? [] : listed(storage)),
    watch: (changed) =>
      page.addEventListener('storage', ({ key, newValue }) => {
        if (key?.startsWith(NAME) === true && newValue !== null) changed(key.slice(NAME.length));
      }),
  };
}

function storageOf(page: Window): Storage | undefined {
  try {
    const storage = page.localStorage;
    storage.setItem(`${NAME}?`, '');
    storage.removeItem(`${NAME}?`);
    return storage;
  } catch {
    return undefined;
  }
}

function tried(work: () => void, otherwise: boolean): boolean {
  try {
    work();
    return otherwise;
  } catch {
    return false;
  }
}

function listed(storage: Storage): readonly Kept[] {
  return Object.keys(storage)
    .filter((key) => key.startsWith(NAME))
    .flatMap((key): Kept[] => {
      const read = readRecordBytes(new TextEncoder().encode(storage.getItem(key) ?? ''), VERSION);
      if (!read.ok) return [];
      const { header, events, strangers } = read.value;
      const entries = events.length + strangers.length;
      return [{ id: key.slice(NAME.length), opened: header.opened, entries }];
    })
    .sort((one, other) => (one.opened < other.opened ? 1 : -1));
}
