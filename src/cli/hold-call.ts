import { advance, type Call } from '../call/call.js';
import { commandsFor, type FaceCan } from '../call/commands.js';
import type { CallEvent } from '../call/events.js';
import { misfitOf } from '../call/misfit.js';
import {
  answered,
  changeable,
  type Happening,
  holdsMore,
  outcomeOf,
  rawOf,
  stillDark,
} from '../call/outcome.js';
import { checkOf, questionScreen, type Screen, screenOf } from '../call/screen.js';
import { MachineFault } from '../files/faults.js';
import type { RecordWriter } from '../files/record-writer.js';
import { terminalText } from '../knowledge/terminal.js';
import { inWords, say } from '../messages/say.js';
import type { Ask, Terminal } from './ask.js';
import { commandsAt } from './commands-at.js';
import type { Eyes } from './look-here.js';
import { lines } from './paint.js';
import type { Reply } from './prompts/reply.js';
import { rankingText } from './ranking-text.js';
import { pathText, screenText } from './show-screen.js';

/** A call being held on a terminal. */
export interface Session {
  readonly terminal: Terminal;
  readonly ask: Ask;
  readonly writer: RecordWriter;
  readonly now: () => string;
  /** The text of an article or a how-to, as markdown; `undefined` where it is not there. */
  readonly read?: (file: string) => string | undefined;
  /** Waits for a text to be pasted; `undefined` where none came. Where this is missing nothing can be pasted. */
  readonly pasted?: () => Promise<string | undefined>;
  /** How this computer is looked at, where it may stand on the site. */
  readonly eyes?: () => Promise<Eyes>;
}

/** How holding a call ended: closed for good, or left open for another time. */
export interface Held {
  readonly call: Call;
  readonly closed: boolean;
}

/** Holds a call from where it stands until it is closed or left. Each event is on the disk before the next step. */
export async function holdCall(
  session: Session,
  start: Call,
  first: readonly Happening[] = [],
): Promise<Held> {
  let call = start;
  for (const happening of first) call = await happen(session, call, happening);
  while (call.state.closed === undefined) {
    const screen = screenOf(call);
    tell(session, screenText(screen, session.terminal.paint, session.terminal.output.columns));
    const reply = await session.ask(
      screen.input,
      commandsAt(commandsFor(call, screen, canOf(session))),
      wrongFor(call),
      (text) => session.pasted !== undefined && holdsMore(call, text),
    );
    const outcome = await followUp(session, call, screen, reply);
    if (outcome === 'left') return { call, closed: false };
    for (const happening of outcome) call = await happen(session, call, happening);
  }
  return { call, closed: true };
}

function canOf({ pasted, eyes }: Session): FaceCan {
  return { paste: pasted !== undefined, here: eyes !== undefined, told: false };
}

/** Checks typed text against the question being asked, before it is taken. */
function wrongFor(call: Call): (text: string) => string | undefined {
  const { step } = call;
  return (text) => (step.kind === 'ask' ? misfitOf(call, step.question, text) : undefined);
}

/** Keeps the event, then goes on. One that the disk would not keep is said, and has not happened. */
async function happen(session: Session, call: Call, happening: Happening): Promise<Call> {
  const event: CallEvent = { at: session.now(), ...happening };
  const next = await advance(call, event);
  if (!next.ok) {
    tell(session, lines(inWords(next.problem), session.terminal.output.columns));
    return call;
  }
  try {
    session.writer.append(event);
  } catch (fault) {
    if (!(fault instanceof MachineFault)) throw fault;
    throw new MachineFault({ id: 'cli.disk', with: { problem: fault.message } }, fault);
  }
  return next.value;
}

type Outcome = readonly Happening[] | 'left';

async function followUp(session: Session, call: Call, screen: Screen, reply: Reply): Promise<Outcome> {
  if (reply.kind === 'command') return commandOutcome(session, call, screen, reply.id);
  if (reply.kind === 'pasted') return takeText(session, call, reply.text);
  const outcome = outcomeOf(call, reply);
  if (outcome.kind === 'event') return [outcome.event];
  return outcome.kind === 'change'
    ? changeAnswer(session, call, outcome.question)
    : tryOutcome(session, call, outcome.remedy);
}

function idOf(reply: Reply): string {
  return reply.kind === 'one' ? reply.id : '';
}

async function tryOutcome(session: Session, call: Call, remedy: string): Promise<Outcome> {
  const check = checkOf(call, remedy);
  tell(session, lines(`${check.heading} ${check.say.join(' ')}`, session.terminal.output.columns));
  return [stillDark(remedy, idOf(await session.ask(check.input, [])))];
}

async function commandOutcome(session: Session, call: Call, screen: Screen, id: string): Promise<Outcome> {
  const { step } = call;
  switch (id) {
    case 'cant-tell':
      return step.kind === 'ask' ? [answered(step.question, null)] : [];
    case 'back':
      return [{ type: 'undone' }];
    case 'change':
      return chooseAnswer(session, call);
    case 'note':
      return takeNote(session);
    case 'paste':
      return pasteOutcome(session, call);
    case 'here':
      return hereOutcome(session, call);
    case 'why':
      tell(session, rankingText(call, session.terminal.paint, session.terminal.output.columns));
      return [];
    case 'how':
      tell(session, readingText(session, screen));
      return [];
    case 'other':
      return step.kind === 'ask' ? [{ type: 'passed-over', step: `ask:${step.question}` }] : [];
    case 'view':
      tell(session, `${pathText(screen.path, session.terminal.output.columns)}\n${say('cli.path-legend')}`);
      return [];
    default:
      return stopOutcome(session);
  }
}

/** The articles and how-tos of a step, one below the other. */
function readingText({ terminal, read }: Session, { reads }: Screen): string {
  const width = terminal.output.columns;
  const texts = reads.flatMap((file) => read?.(file) ?? []);
  if (texts.length === 0) return say('cli.how-none');
  const layout = { paint: terminal.paint, ...(width === undefined ? {} : { width }) };
  return texts.map((text) => `\n${terminalText(text, layout)}`).join('\n');
}

async function chooseAnswer(session: Session, call: Call): Promise<Outcome> {
  const choices = changeable(call).map(({ id, title, answer }) => ({
    id,
    title: say('cli.change.one', { title, answer }),
  }));
  tell(session, say('cli.change.heading'));
  const none = { id: '', title: say('cli.change.none') };
  const picked = idOf(await session.ask({ kind: 'choice', choices: [none, ...choices] }, []));
  return picked === '' ? [] : changeAnswer(session, call, picked);
}

async function changeAnswer(session: Session, call: Call, id: string): Promise<Outcome> {
  const question = call.rules.questions.find((one) => one.id === id);
  if (!question) return [];
  const { say: words, help, input } = questionScreen(call, id);
  tell(session, lines([...words, ...help].join('\n'), session.terminal.output.columns));
  const reply = await session.ask(input, commandsAt(['cant-tell', 'back']), (text) =>
    misfitOf(call, id, text),
  );
  if (reply.kind === 'pasted') return takeText(session, call, reply.text);
  if (reply.kind !== 'command') return [answered(id, rawOf(reply))];
  return reply.id === 'cant-tell' ? [answered(id, null)] : [];
}

async function pasteOutcome(session: Session, call: Call): Promise<Outcome> {
  const text = await session.pasted?.();
  if (text === undefined) {
    tell(session, say('paste.nothing-came'));
    return [];
  }
  return takeText(session, call, text);
}

async function takeText(session: Session, call: Call, text: string): Promise<Outcome> {
  const { ask, terminal } = session;
  const desk = { ask, tell: (words: string) => tell(session, words), columns: terminal.output.columns };
  // Loaded when wanted: few calls paste anything, and every start would pay for it.
  const { takePaste } = await import('./take-paste.js');
  const event = await takePaste(desk, call, text);
  return event ? [event] : [];
}

async function hereOutcome(session: Session, call: Call): Promise<Outcome> {
  const { ask, eyes, terminal } = session;
  if (eyes === undefined) return [];
  const { readHere } = await import('./read-here.js');
  return readHere(await eyes(), terminal, ask, call);
}

async function takeNote(session: Session): Promise<Outcome> {
  tell(session, say('cli.note.say'));
  const reply = await session.ask({ kind: 'field' }, commandsAt(['back']));
  return reply.kind === 'text' && reply.text.trim() !== '' ? [{ type: 'noted', text: reply.text }] : [];
}

async function stopOutcome(session: Session): Promise<Outcome> {
  tell(session, say('cli.stop.heading'));
  const choices = (['ticket', 'later', 'back'] as const).map((id) => ({ id, title: say(`cli.stop.${id}`) }));
  const picked = idOf(await session.ask({ kind: 'choice', choices }, []));
  if (picked === 'ticket') return [{ type: 'closed', how: 'stopped' }];
  return picked === 'later' ? 'left' : [];
}

function tell(session: Session, text: string): void {
  session.terminal.output.write(`${text}\n`);
}
