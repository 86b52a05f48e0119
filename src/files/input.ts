import { createReadStream } from 'node:fs';
import { say } from '../messages/say.js';
import { faultOf, InputFault } from './faults.js';
import { printable } from './printable.js';
import { MEBIBYTE, tooLarge } from './read-limited.js';

/** The most that is read from a file or from standard input, in bytes. */
export const LARGEST_INPUT = 5 * MEBIBYTE;

/**
 * The whole text of a file, or of `stdin` where the name is `-`. UTF-8, or UTF-16 where a byte order mark says
 * so (a Windows shell saves output like that); the mark is dropped. Bytes of an older code page become U+FFFD:
 * addresses and figures are ASCII in all of them. Throws an InputFault where it is over 5 MiB or holds no text.
 */
export async function readInput(name: string, stdin: AsyncIterable<Uint8Array | string>): Promise<string> {
  const shown = name === '-' ? say('files.standard-input') : name;
  try {
    const source: AsyncIterable<Uint8Array | string> = name === '-' ? stdin : createReadStream(name);
    return decode(await gather(source, shown), shown);
  } catch (error) {
    throw faultOf(error, shown);
  }
}

/** The same as it stands, in whatever code page. */
export async function readBytes(
  name: string,
  stdin: AsyncIterable<Uint8Array | string>,
): Promise<Uint8Array> {
  const shown = name === '-' ? say('files.standard-input') : name;
  try {
    return await gather(name === '-' ? stdin : createReadStream(name), shown);
  } catch (error) {
    throw faultOf(error, shown);
  }
}

async function gather(source: AsyncIterable<Uint8Array | string>, shown: string): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of source) {
    const bytes = Buffer.from(chunk);
    length += bytes.length;
    if (length > LARGEST_INPUT) throw tooLarge(shown, LARGEST_INPUT);
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
}

function decode(bytes: Buffer, shown: string): string {
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes);
  if (text.includes('\0')) throw new InputFault({ id: 'files.not-text', with: { path: printable(shown) } });
  return text;
}

function encodingOf(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return 'utf-8';
}
