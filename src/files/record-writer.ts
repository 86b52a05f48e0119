import { closeSync, fstatSync, fsyncSync, ftruncateSync, writeSync } from 'node:fs';
import type { CallEvent } from '../call/events.js';
import { eventProblem } from '../call/record/event-guards.js';
import { printable } from '../messages/printable.js';
import { attempt, faultOf, MachineFault } from './faults.js';
import type { Release } from './lock.js';

/** A call record that is open for writing, and locked until it is closed. */
export interface RecordWriter {
  readonly path: string;
  /**
   * Adds one event. When it comes back, the event is on the disk. Throws a MachineFault when it cannot be
   * kept; the record then holds what it held before, and the same event can be added again later.
   */
  readonly append: (event: CallEvent) => void;
  /** Closes the file and lets go of the lock. Doing it twice does nothing the second time. */
  readonly close: () => void;
}

/** Writes on an open file whose first `kept` bytes are whole lines; what follows them is cut off first. */
export function recordWriter(path: string, file: number, kept: number, release: Release): RecordWriter {
  let good = kept;
  let size = fstatSync(file).size;
  let open = true;
  return {
    path,
    append: (event) => {
      const line = lineOf(event);
      if (!open) throw new Error(`the record ${path} is closed`);
      attempt(path, () => refuseIfChanged(path, file, size));
      try {
        if (size > good) ftruncateSync(file, good);
        writeWhole(file, line, good);
        fsyncSync(file);
        good += line.length;
        size = good;
      } catch (error) {
        size = cutBack(file, good);
        throw faultOf(error, path);
      }
    },
    close: () => {
      if (!open) return;
      open = false;
      try {
        closeSync(file);
      } finally {
        release();
      }
    },
  };
}

/** One event as a line. Throws an Error, a fault of ours, when it would not read back as the same event. */
function lineOf(event: CallEvent): Buffer {
  const wrong = eventProblem(event);
  if (wrong !== undefined) throw new Error(`not an event: ${wrong.id} ${JSON.stringify(wrong.with)}`);
  return Buffer.from(`${JSON.stringify(event)}\n`, 'utf8');
}

/** Writes a line in one write. Throws when not all of it went in. */
export function writeWhole(file: number, line: Buffer, at: number): void {
  const written = writeSync(file, line, 0, line.length, at);
  // A short write means that room ran out; asking for the rest makes the system say why.
  if (written < line.length) writeSync(file, line, written, line.length - written, at + written);
}

/** Removes what a failed write left, as far as the disk allows; the next append tries again. */
function cutBack(file: number, good: number): number {
  try {
    ftruncateSync(file, good);
    fsyncSync(file);
  } catch {
    // The write's own error is the one to tell.
  }
  return fstatSync(file).size;
}

function refuseIfChanged(path: string, file: number, size: number): void {
  const now = fstatSync(file);
  if (now.size !== size || now.nlink === 0)
    throw new MachineFault({ id: 'files.record-changed', with: { path: printable(path) } });
}
