import { type RecordText, readRecordBytes } from '../call/record/read-record.js';
import { printable } from '../messages/printable.js';
import { InputFault } from './faults.js';

/**
 * Reads the bytes of a call record. `whydark` is the running version. A torn last line is reported and left out.
 * Throws an InputFault that names the line for everything else that is wrong.
 */
export function readRecordText(bytes: Uint8Array, path: string, whydark: string): RecordText {
  const read = readRecordBytes(bytes, whydark);
  if (read.ok) return read.value;
  const { id, with: filling } = read.problem;
  throw new InputFault({ id, with: { ...filling, path: printable(path), line: read.line } });
}
