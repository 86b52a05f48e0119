import { printable } from '../../messages/printable.js';
import type { Sentence } from '../../messages/say.js';
import type { CallEvent, CallHeader } from '../events.js';
import { type AnyEvent, eventProblem, isKnown } from './event-guards.js';
import { headerProblem, isHeader } from './header-guard.js';
import { type JsonLine, jsonLines } from './json-lines.js';
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

/** A record, or what is wrong with it; the sentence still lacks the `path`. */
export type RecordRead =
  | { readonly ok: true; readonly value: RecordText }
  | { readonly ok: false; readonly line: number; readonly problem: Sentence };

/**
 * Reads the bytes of a call record: JSON lines, the header first. `whydark` is the running version.
 * A last line that lacks its newline, or is no JSON, is reported as torn and left out.
 * Everything else that is wrong comes back as the sentence that says so, with its line.
 */
export function readRecordBytes(bytes: Uint8Array, whydark: string): RecordRead {
  const lines = jsonLines(bytes);
  const first = lines.next();
  const header = first.done === true ? undefined : first.value;
  if (header?.ended !== true || !isHeader(header.value)) {
    const wrong = header?.ended === true ? headerProblem(header.value) : undefined;
    return wrongAt(wrong ?? { id: 'files.record-no-header' }, 1);
  }
  const events: CallEvent[] = [];
  const strangers: { line: number; event: AnyEvent }[] = [];
  let length = bytes.indexOf(0x0a) + 1;
  let number = 1;
  for (const line of lines) {
    number += 1;
    const cut = !line.ended || (line.value === undefined && line.end === bytes.length);
    const whole = { header: header.value, events, strangers, length };
    if (cut) return { ok: true, value: { ...whole, torn: { line: number, bytes: line.end - length } } };
    const wrong = lineProblem(line);
    if (wrong) return wrongAt(wrong, number);
    const event = line.value as AnyEvent;
    if (isKnown(event)) events.push(event);
    else if (isNewer(header.value.whydark, whydark)) strangers.push({ line: number, event });
    else return wrongAt({ id: 'files.event-unknown', with: { type: printable(event.type, 40) } }, number);
    length = line.end;
  }
  return { ok: true, value: { header: header.value, events, strangers, length } };
}

/** All events of a record, those of newer kinds in their places: taking back takes back one of those too. */
export function eventsInOrder({ events, strangers }: RecordText): readonly CallEvent[] {
  const all = [...events];
  // The header is line 1, so the first event stands on line 2.
  for (const { line, event } of strangers) all.splice(line - 2, 0, event as unknown as CallEvent);
  return all;
}

/** A record as it is kept: the header and each event on a line of JSON (RFC 8259). */
export function recordTextOf(header: CallHeader, events: readonly CallEvent[]): string {
  return [header, ...events].map((line) => `${JSON.stringify(line)}\n`).join('');
}

function lineProblem({ value }: JsonLine): Sentence | undefined {
  return value === undefined ? { id: 'files.line-broken' } : eventProblem(value);
}

function wrongAt(problem: Sentence, line: number): RecordRead {
  return { ok: false, line, problem };
}
