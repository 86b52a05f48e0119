import type { CallEvent, CallHeader } from '../call/events.js';
import type { Sentence } from '../messages/say.js';
import { type AnyEvent, eventProblem, isKnown } from './event-guards.js';
import { InputFault } from './faults.js';
import { headerProblem, isHeader } from './header-guard.js';
import { type JsonLine, jsonLines } from './json-lines.js';
import { printable } from './printable.js';
import { isNewer } from './version.js';

/** What a call record says. */
export interface RecordText {
  readonly header: CallHeader;
  /** The events of the kinds that this release knows, in order; fields of newer releases are in them still. */
  readonly events: readonly CallEvent[];
  /** Events of kinds that only the newer release that opened the call knows. The file keeps them as they are. */
  readonly strangers: readonly { readonly line: number; readonly event: AnyEvent }[];
  /** The last line, where it was cut off while it was being written. Nobody was told that it was kept. */
  readonly torn?: { readonly line: number; readonly bytes: number };
  /** Bytes up to the end of the last whole line. */
  readonly length: number;
}

/**
 * Reads the bytes of a call record: JSON lines, the header first. `whydark` is the running version.
 * A last line that lacks its newline, or is no JSON, is reported as torn and left out.
 * Throws an InputFault that names the line for everything else that is wrong.
 */
export function readRecordText(bytes: Uint8Array, path: string, whydark: string): RecordText {
  const lines = jsonLines(bytes);
  const first = lines.next();
  const header = headerOf(first.done === true ? undefined : first.value, path);
  const events: CallEvent[] = [];
  const strangers: { line: number; event: AnyEvent }[] = [];
  let length = bytes.indexOf(0x0a) + 1;
  let number = 1;
  for (const line of lines) {
    number += 1;
    const cut = !line.ended || (line.value === undefined && line.end === bytes.length);
    if (cut) return { header, events, strangers, torn: { line: number, bytes: line.end - length }, length };
    const event = eventOf(line, path, number);
    if (isKnown(event)) events.push(event);
    else if (isNewer(header.whydark, whydark)) strangers.push({ line: number, event });
    else
      throw lineFault({ id: 'files.event-unknown', with: { type: printable(event.type, 40) } }, path, number);
    length = line.end;
  }
  return { header, events, strangers, length };
}

function headerOf(line: JsonLine | undefined, path: string): CallHeader {
  if (line?.ended === true && isHeader(line.value)) return line.value;
  const wrong = line?.ended === true ? headerProblem(line.value) : undefined;
  throw lineFault(wrong ?? { id: 'files.record-no-header' }, path, 1);
}

function eventOf(line: JsonLine, path: string, number: number): AnyEvent {
  if (line.value === undefined) throw lineFault({ id: 'files.line-broken' }, path, number);
  const wrong = eventProblem(line.value);
  if (wrong !== undefined) throw lineFault(wrong, path, number);
  return line.value as AnyEvent;
}

function lineFault(wrong: Sentence, path: string, line: number): InputFault {
  return new InputFault({ id: wrong.id, with: { ...wrong.with, path: printable(path), line } });
}
