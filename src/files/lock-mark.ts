import { closeSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { codeOf, faultOf } from './faults.js';
import type { Holder } from './process-marks.js';

/** Makes the mark with O_EXCL. False when it is there already; one that cannot be written whole is removed. */
export function makeMark(mark: string, words: string): boolean {
  try {
    const file = openSync(mark, 'wx', 0o600);
    try {
      writeSync(file, words);
    } catch (error) {
      rmSync(mark, { force: true });
      throw error;
    } finally {
      closeSync(file);
    }
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw faultOf(error, mark);
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
