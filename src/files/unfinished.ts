import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { CallHeader } from '../call/events.js';
import type { Sentence } from '../messages/say.js';
import { codeOf, faultOf } from './faults.js';
import { readRecord } from './record.js';

/** A call that nobody closed. `last` is the time of its last event, or of its opening. */
export interface UnfinishedCall {
  readonly path: string;
  readonly header: CallHeader;
  readonly events: number;
  readonly last: string;
}

/** The unfinished calls of a folder, and the records that could not be read. */
export interface Unfinished {
  readonly calls: readonly UnfinishedCall[];
  readonly unreadable: readonly { readonly path: string; readonly sentence: Sentence }[];
}

/**
 * The records without a `closed` event, the call opened last first; equal times by name. A folder that is
 * not there holds none. `whydark` is the running version. Throws only where the folder itself cannot be read.
 */
export function unfinished(folder: string, whydark: string): Unfinished {
  const calls: UnfinishedCall[] = [];
  const unreadable: { path: string; sentence: Sentence }[] = [];
  for (const name of recordNames(folder)) {
    const path = join(folder, name);
    try {
      const { header, events } = readRecord(path, whydark);
      if (events.some((event) => event.type === 'closed')) continue;
      calls.push({ path, header, events: events.length, last: events.at(-1)?.at ?? header.opened });
    } catch (error) {
      unreadable.push({ path, sentence: faultOf(error, path).sentence });
    }
  }
  calls.sort((one, other) => Date.parse(other.header.opened) - Date.parse(one.header.opened));
  return { calls, unreadable };
}

function recordNames(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith('.jsonl'))
      .sort();
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return [];
    throw faultOf(error, folder);
  }
}
