import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { type Call, openCall } from '../call/call.js';
import { type CallHeader, RECORD_FORMAT } from '../call/events.js';
import { recordName } from '../call/record/record-name.js';
import { VERSION } from '../call/version.js';
import type { LoadedRules } from '../files/load-rules.js';
import { createRecord, resumeRecord } from '../files/record.js';
import type { RecordWriter } from '../files/record-writer.js';
import { unfinished } from '../files/unfinished.js';
import { inWords, say } from '../messages/say.js';
import type { Ask, Terminal } from './ask.js';
import { callFromText } from './open-record.js';
import { lines } from './paint.js';

/** A call with the record it is kept in. */
export interface Opened {
  readonly call: Call;
  readonly writer: RecordWriter;
  readonly resumed: boolean;
}

/** More than this many nobody looks through. */
const OFFERED = 8;

/** Asks whether to go on with an unfinished call of the folder; gives its path, or nothing for a new call. */
export async function chooseUnfinished(
  folder: string,
  { terminal, ask }: { readonly terminal: Terminal; readonly ask: Ask },
): Promise<string | undefined> {
  const tell = (text: string): unknown => terminal.output.write(`${lines(text, terminal.output.columns)}\n`);
  const { calls, unreadable } = unfinished(folder, VERSION);
  for (const { sentence } of unreadable) tell(say('cli.unreadable', { problem: inWords(sentence) }));
  if (calls.length === 0) return undefined;
  tell(say('cli.unfinished-say'));
  const choices = calls.slice(0, OFFERED).map(({ path, header, events }) => ({
    id: path,
    title: say('cli.unfinished-one', { opened: header.opened.slice(0, 16).replace('T', ' '), events }),
  }));
  const anew = { id: '', title: say('cli.unfinished-new') };
  const reply = await ask({ kind: 'choice', choices: [anew, ...choices] }, []);
  return reply.kind === 'one' && reply.id !== '' ? reply.id : undefined;
}

/** A new call, kept in this file, or under a name of its own in a folder. */
export async function begin(
  where: string | { readonly folder: string },
  { role, opened }: Pick<CallHeader, 'role' | 'opened'>,
  { rules, digest }: LoadedRules,
): Promise<Opened> {
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id: randomUUID().slice(0, 8),
    opened,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role,
  };
  const path = typeof where === 'string' ? where : join(where.folder, recordName(header));
  const writer = createRecord(path, header);
  return { call: await openCall(rules, digest, header), writer, resumed: false };
}

/** A call to go on with. */
export async function resume(
  path: string,
  loaded: LoadedRules,
  tell: (text: string) => unknown,
): Promise<Opened> {
  const text = resumeRecord(path, VERSION);
  try {
    return { call: await callFromText(path, text, loaded, tell), writer: text.writer, resumed: true };
  } catch (error) {
    text.writer.close();
    throw error;
  }
}
