import { randomUUID } from 'node:crypto';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type Call, openCall } from '../../call/call.js';
import { type CallHeader, RECORD_FORMAT } from '../../call/events.js';
import { ticketOf } from '../../call/ticket-of.js';
import { VERSION } from '../../call/version.js';
import { exists } from '../../files/exists.js';
import { InputFault } from '../../files/faults.js';
import type { LoadedRules } from '../../files/load-rules.js';
import { createRecord, resumeRecord } from '../../files/record.js';
import type { RecordWriter } from '../../files/record-writer.js';
import { callsFolder, makeCallsFolder, recordName } from '../../files/state-folder.js';
import { unfinished } from '../../files/unfinished.js';
import { inWords, say } from '../../messages/say.js';
import { type Ask, askOn, type Terminal } from '../ask.js';
import { holdCall } from '../hold-call.js';
import { rulesFor } from '../load-rules.js';
import { callFromText } from '../open-record.js';
import type { Options } from '../options.js';
import { lines, paintFor } from '../paint.js';
import { EXIT } from '../run.js';

interface Opened {
  readonly call: Call;
  readonly writer: RecordWriter;
}

/** `whydark call [--record FILE] [--site]`: holds a call on the terminal; the ticket goes to stdout at its end. */
export async function call(options: Options): Promise<number> {
  const [extra] = options.operands;
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'call', extra } });
  if (!process.stdin.isTTY || !process.stderr.isTTY) throw new InputFault({ id: 'cli.no-terminal' });
  const loaded = await rulesFor(options);
  const terminal: Terminal = {
    input: process.stdin,
    output: process.stderr,
    paint: paintFor(process.stderr, process.env),
  };
  const ask = askOn(terminal);
  let record: string | undefined = options.record;
  try {
    const { call: start, writer } = await open(options, loaded, terminal, ask);
    record = writer.path;
    tell(terminal, lines(say('cli.record-at', { file: record }), terminal.output.columns));
    const { call: end, closed } = await holdCall({ terminal, ask, writer, now }, start);
    writer.close();
    if (!closed) {
      tell(terminal, say('cli.interrupted', { file: record }));
      return EXIT.done;
    }
    tell(terminal, `\n${say('cli.ticket-follows')}\n`);
    process.stdout.write(ticketOf(end, { unmasked: options.unmasked }));
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'ExitPromptError') throw error;
    tell(terminal, record === undefined ? '' : `\n${say('cli.interrupted', { file: record })}`);
    return EXIT.interrupted;
  }
}

function now(): string {
  return new Date().toISOString();
}

function tell(terminal: Terminal, text: string): void {
  terminal.output.write(`${text}\n`);
}

async function open(options: Options, loaded: LoadedRules, terminal: Terminal, ask: Ask): Promise<Opened> {
  const version = { version: VERSION, rules: loaded.rules.manifest.version };
  tell(terminal, lines(say('cli.greeting', version), terminal.output.columns));
  tell(terminal, lines(say('cli.greeting-privacy'), terminal.output.columns));
  if (options.record !== undefined) {
    return exists(options.record)
      ? resume(options.record, loaded, terminal)
      : begin(options.record, options, loaded);
  }
  const folder = callsFolder(process.env, homedir());
  makeCallsFolder(folder);
  const chosen = await chooseUnfinished(folder, terminal, ask);
  return chosen === undefined ? begin(undefined, options, loaded, folder) : resume(chosen, loaded, terminal);
}

async function chooseUnfinished(folder: string, terminal: Terminal, ask: Ask): Promise<string | undefined> {
  const { calls, unreadable } = unfinished(folder, VERSION);
  for (const { sentence } of unreadable)
    tell(terminal, say('cli.unreadable', { problem: inWords(sentence) }));
  if (calls.length === 0) return undefined;
  tell(terminal, say('cli.unfinished-say'));
  const choices = calls.slice(0, 8).map(({ path, header, events }) => ({
    id: path,
    title: say('cli.unfinished-one', { opened: header.opened.slice(0, 16).replace('T', ' '), events }),
  }));
  const reply = await ask(
    { kind: 'choice', choices: [{ id: '', title: say('cli.unfinished-new') }, ...choices] },
    [],
  );
  return reply.kind === 'one' && reply.id !== '' ? reply.id : undefined;
}

async function begin(
  path: string | undefined,
  options: Options,
  { rules, digest }: LoadedRules,
  folder = '',
): Promise<Opened> {
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id: randomUUID().slice(0, 8),
    opened: now(),
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: options.site ? 'site' : 'desk',
  };
  const writer = createRecord(path ?? join(folder, recordName(header)), header);
  return { call: await openCall(rules, digest, header), writer };
}

async function resume(path: string, loaded: LoadedRules, terminal: Terminal): Promise<Opened> {
  const text = resumeRecord(path, VERSION);
  try {
    const opened = await callFromText(path, text, loaded);
    tell(terminal, say('cli.resumed', { events: opened.state.events.length }));
    return { call: opened, writer: text.writer };
  } catch (error) {
    text.writer.close();
    throw error;
  }
}
