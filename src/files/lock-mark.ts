import { closeSync, linkSync, openSync, readFileSync, rmSync, writeFileSync, writeSync } from 'node:fs';
import { codeOf, faultOf } from './faults.js';
import type { Holder } from './process-marks.js';

/** Codes of link() where the file system has none: EPERM in POSIX.1-2017, the others as seen on network drives. */
const WITHOUT_LINKS: ReadonlySet<string> = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/**
 * Makes the mark, whole or not at all: written beside its place and linked to it, since a reader who finds
 * it empty would take its maker for dead. False when there is one already.
 */
export function makeMark(mark: string, words: string): boolean {
  const draft = `${mark}.${process.pid}`;
  try {
    writeFileSync(draft, words, { mode: 0o600 });
    putInPlace(draft, mark, words);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw faultOf(error, mark);
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Not every file system has links (FAT on a stick, some network drives): the mark is written there itself. */
function putInPlace(draft: string, mark: string, words: string): void {
  try {
    linkSync(draft, mark);
  } catch (error) {
    if (!WITHOUT_LINKS.has(codeOf(error) ?? '')) throw error;
    writeNew(mark, words);
  }
}

function writeNew(mark: string, words: string): void {
  const file = openSync(mark, 'wx', 0o600);
  try {
    writeSync(file, words);
  } catch (error) {
    rmSync(mark, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}

/** What the mark says, or undefined where there is none. */
export function readMark(mark: string): string | undefined {
  try {
    return readFileSync(mark, 'utf8');
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw faultOf(error, mark);
  }
}

/** The same, once it names a holder. It is given a tenth of a second for that: it may be being written. */
export function settledMark(mark: string): string | undefined {
  for (let tries = 0; tries < 5; tries += 1) {
    const words = readMark(mark);
    if (words === undefined || holderOf(words) !== undefined) return words;
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
  }
  return readMark(mark);
}

/** The holder that a mark names, or undefined where it names none. */
export function holderOf(words: string | undefined): Holder | undefined {
  try {
    const value: unknown = JSON.parse(words ?? '');
    if (typeof value !== 'object' || value === null) return undefined;
    const { pid, started, host } = value as Readonly<Record<string, unknown>>;
    if (typeof pid !== 'number' || !Number.isSafeInteger(pid) || pid <= 0) return undefined;
    if (typeof started !== 'string' || typeof host !== 'string') return undefined;
    return { pid, started, host };
  } catch {
    return undefined;
  }
}
