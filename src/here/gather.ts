import { textOf } from '../intake/text-of.js';
import type { Sentence } from '../messages/say.js';
import { type Argv, type Command, typed } from './commands.js';
import type { Machine, Ran } from './machine.js';

/** What the commands printed, as one text to read, each output behind its prompt. */
export interface Gathered {
  readonly text: string;
  /** As typed, in the order of the text. */
  readonly ran: readonly string[];
  /** A sentence for each command that gave nothing, also where another one stood in for it. */
  readonly missed: readonly Sentence[];
}

const SECONDS = 5;

/** Runs the commands, all at once. One that is missing or fails is named and passed over. Never throws. */
export async function gather(commands: readonly Command[], machine: Machine): Promise<Gathered> {
  const outputs = await Promise.all(commands.map((command) => outputOf(command, machine)));
  const pieces = outputs.flatMap(({ pieces }) => pieces);
  return {
    text: pieces.map(({ command, text }) => `$ ${command}\n${saidIn(text)}\n`).join('\n'),
    ran: pieces.map(({ command }) => command),
    missed: outputs.flatMap(({ missed }) => missed),
  };
}

/** A command with nothing to tell says so as an empty list of JSON. */
function saidIn(text: string): string {
  const said = text.trimEnd();
  return /^\s*\[\s*\]$/.test(said) ? '' : said;
}

interface Output {
  readonly pieces: readonly { readonly command: string; readonly text: string }[];
  readonly missed: readonly Sentence[];
}

async function outputOf(command: Command, machine: Machine): Promise<Output> {
  if (command.file !== undefined) return fileOutput(command.argv, command.file, machine);
  const first = await commandOutput(command.argv, machine);
  if (first.missed.length === 0 || command.instead === undefined) return first;
  const other = await commandOutput(command.instead, machine);
  return { pieces: other.pieces, missed: [...first.missed, ...other.missed] };
}

function fileOutput(argv: Argv, file: string, machine: Machine): Output {
  const bytes = machine.read(file);
  return bytes === undefined
    ? { pieces: [], missed: [{ id: 'here.no-file', with: { file } }] }
    : { pieces: [{ command: typed(argv), text: textOf(bytes) }], missed: [] };
}

async function commandOutput(argv: Argv, machine: Machine): Promise<Output> {
  const command = typed(argv);
  const ran = await machine.run(argv, SECONDS * 1000);
  const missed = missedBy(command, ran, SECONDS);
  if (missed !== undefined) return { pieces: [], missed: [missed] };
  return { pieces: ran.kind === 'ended' ? [{ command, text: textOf(ran.output) }] : [], missed: [] };
}

/** Why a command gave nothing to read; undefined where it did its work. */
function missedBy(command: string, ran: Ran, seconds: number): Sentence | undefined {
  switch (ran.kind) {
    case 'ended':
      return ran.status === 0 ? undefined : { id: 'here.failed', with: { command, status: ran.status } };
    case 'missing':
      return { id: 'here.missing', with: { command } };
    case 'late':
      return { id: 'here.late', with: { command, seconds } };
    case 'too-long':
      return { id: 'here.too-long', with: { command } };
    case 'not-started':
      return { id: 'here.not-started', with: { command } };
  }
}
