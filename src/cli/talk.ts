import type { Call } from '../call/call.js';
import type { Happening } from '../call/outcome.js';
import { ticketOf } from '../call/ticket-of.js';
import { VERSION } from '../call/version.js';
import { exists } from '../files/exists.js';
import type { LoadedRules } from '../files/load-rules.js';
import { callsFolder, makeCallsFolder } from '../files/state-folder.js';
import { say } from '../messages/say.js';
import type { Ask, Terminal } from './ask.js';
import { begin, chooseUnfinished, type Opened, resume } from './begin-or-resume.js';
import { holdCall } from './hold-call.js';
import type { Eyes } from './look-here.js';
import type { Options } from './options.js';
import { lines } from './paint.js';
import { EXIT } from './run.js';

/** Where a call is held: who is asked, where the ticket goes, which clock and which folders hold. */
export interface Desk {
  readonly terminal: Terminal;
  readonly ask: Ask;
  readonly results: { readonly write: (text: string) => unknown };
  readonly now: () => string;
  readonly env: NodeJS.ProcessEnv;
  readonly home: string;
  /** The text of an article or a how-to, as markdown; `undefined` where it is not there. */
  readonly read?: (file: string) => string | undefined;
  /** Waits for a text to be pasted. */
  readonly pasted?: () => Promise<string | undefined>;
  /** How the computer that the call is held on is looked at. */
  readonly eyes?: () => Promise<Eyes>;
  /** What a new call begins with, out of what was found before it. */
  readonly first?: (call: Call) => readonly Happening[];
}

/**
 * A call from the greeting to the ticket; gives the exit status. Ctrl-C leaves the call open and says how to go
 * on. Throws an InputFault or a MachineFault where the record cannot be used or kept.
 */
export async function talk(options: Options, loaded: LoadedRules, desk: Desk): Promise<number> {
  const { terminal, results } = desk;
  const tell = (text: string): unknown => terminal.output.write(`${lines(text, terminal.output.columns)}\n`);
  tell(say('cli.greeting', { version: VERSION, rules: loaded.rules.manifest.version }));
  tell(say('cli.greeting-privacy'));
  let opened: Opened | undefined;
  try {
    opened = await open(options, loaded, desk, tell);
    const { call: start, writer } = opened;
    if (opened.resumed) tell(say('cli.resumed', { events: start.state.events.length }));
    tell(say('cli.record-at', { file: writer.path }));
    const { call: end, closed } = await holdCall(
      { ...desk, writer },
      start,
      opened.resumed ? undefined : desk.first?.(start),
    );
    if (closed) {
      tell(`\n${say('cli.ticket-follows')}\n`);
      results.write(ticketOf(end, { unmasked: options.unmasked }));
    } else tell(say('cli.left-open', { file: writer.path }));
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'ExitPromptError') throw error;
    if (opened) tell(`\n${say('cli.interrupted', { file: opened.writer.path })}`);
    return EXIT.interrupted;
  } finally {
    opened?.writer.close();
  }
}

async function open(
  options: Options,
  loaded: LoadedRules,
  desk: Desk,
  tell: (text: string) => unknown,
): Promise<Opened> {
  const { record } = options;
  const fresh = { role: options.site ? 'site' : 'desk', opened: desk.now() } as const;
  if (record !== undefined)
    return exists(record) ? resume(record, loaded, tell) : begin(record, fresh, loaded);
  const folder = callsFolder(desk.env, desk.home);
  makeCallsFolder(folder);
  const chosen = await chooseUnfinished(folder, desk);
  return chosen === undefined ? begin({ folder }, fresh, loaded) : resume(chosen, loaded, tell);
}
