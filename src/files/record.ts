import { closeSync, fsyncSync, openSync, realpathSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { CallHeader } from '../call/events.js';
import { headerProblem } from '../call/record/header-guard.js';
import type { RecordText } from '../call/record/read-record.js';
import { attempt, codeOf } from './faults.js';
import { lock } from './lock.js';
import { MEBIBYTE, readLimited, readOpen } from './read-limited.js';
import { readRecordText } from './record-text.js';
import { type RecordWriter, recordWriter, writeWhole } from './record-writer.js';

/** The largest record that is read: an hour's call is some tens of kilobytes, with pastes. */
const LARGEST = 64 * MEBIBYTE;

/**
 * Begins a call record: a new file, mode 0600, with the header as its first line, on the disk when this
 * comes back. Throws an InputFault where the file is there already or its folder is not, else a
 * MachineFault; then no file is left behind.
 */
export function createRecord(path: string, header: CallHeader): RecordWriter {
  const wrong = headerProblem(header);
  if (wrong !== undefined) throw new Error(`not a header: ${wrong.id} ${JSON.stringify(wrong.with)}`);
  return attempt(path, () => {
    const folder = realpathSync(dirname(path));
    const place = join(folder, basename(path));
    const release = lock(place);
    try {
      const file = openSync(place, 'wx+', 0o600);
      try {
        const line = Buffer.from(`${JSON.stringify(header)}\n`, 'utf8');
        writeWhole(file, line, 0);
        fsyncSync(file);
        syncFolder(folder);
        return recordWriter(place, file, line.length, release);
      } catch (error) {
        closeSync(file);
        rmSync(place, { force: true });
        throw error;
      }
    } catch (error) {
      release();
      throw error;
    }
  });
}

/** Reads a call record, changing nothing. `whydark` is the running version. Throws an InputFault or a MachineFault. */
export function readRecord(path: string, whydark: string): RecordText {
  return readRecordText(readLimited(path, LARGEST), path, whydark);
}

/** Opens a call record to go on with it. What a torn last line left is cut off before the first event added. */
export function resumeRecord(path: string, whydark: string): RecordText & { readonly writer: RecordWriter } {
  return attempt(path, () => {
    const place = realpathSync(path);
    const release = lock(place);
    try {
      const file = openSync(place, 'r+');
      try {
        const text = readRecordText(readOpen(file, path, LARGEST), path, whydark);
        return { ...text, writer: recordWriter(place, file, text.length, release) };
      } catch (error) {
        closeSync(file);
        throw error;
      }
    } catch (error) {
      release();
      throw error;
    }
  });
}

/** Makes a new name in a folder last through a power cut, where the file system can do so. */
function syncFolder(folder: string): void {
  const file = openSync(folder, 'r');
  try {
    fsyncSync(file);
  } catch (error) {
    if (!['EINVAL', 'EPERM', 'EISDIR', 'ENOTSUP'].includes(codeOf(error) ?? '')) throw error;
  } finally {
    closeSync(file);
  }
}
