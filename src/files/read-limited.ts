import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { printable } from '../messages/printable.js';
import { say } from '../messages/say.js';
import { attempt, InputFault } from './faults.js';

export const MEBIBYTE = 1024 * 1024;

/** The fault of a file that is larger than it may be; `limit` in bytes, a whole number of MiB. */
export function tooLarge(path: string, limit: number): InputFault {
  const words = say('files.mebibytes', { count: limit / MEBIBYTE });
  return new InputFault({ id: 'files.too-large', with: { path: printable(path), limit: words } });
}

/**
 * The bytes of an ordinary file of at most `limit` bytes.
 * Throws an InputFault or a MachineFault; never waits on a pipe or a device.
 */
export function readLimited(path: string, limit: number): Buffer {
  return attempt(path, () => {
    const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      return readOpen(file, path, limit);
    } finally {
      closeSync(file);
    }
  });
}

/** The same for a file that is open already; read from its beginning, whatever was read before. */
export function readOpen(file: number, path: string, limit: number): Buffer {
  const stat = fstatSync(file);
  if (stat.isDirectory()) throw new InputFault({ id: 'files.is-folder', with: { path: printable(path) } });
  if (!stat.isFile()) throw new InputFault({ id: 'files.not-a-file', with: { path: printable(path) } });
  if (stat.size > limit) throw tooLarge(path, limit);
  const bytes = Buffer.alloc(stat.size);
  let length = 0;
  while (length < bytes.length) {
    const count = readSync(file, bytes, length, bytes.length - length, length);
    if (count === 0) break;
    length += count;
  }
  return bytes.subarray(0, length);
}

/** Text of a file in UTF-8, byte order mark dropped. Throws an InputFault where the bytes are not UTF-8. */
export function textOf(bytes: Uint8Array, path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw new InputFault({ id: 'files.not-text', with: { path: printable(path) } }, error);
  }
}
