import { InputFault, MachineFault } from '../files/faults.js';
import { printable } from '../files/printable.js';
import { say } from '../messages/say.js';
import { commandOf, type Options, readOptions, unknownWord } from './options.js';

/** Exit statuses, stable and documented: what a script may rely on. */
export const EXIT = { done: 0, failed: 1, wrongUse: 2, machine: 3, interrupted: 130 } as const;

type Command = (options: Options) => Promise<number>;

/** Each command loads only when it is given. */
const COMMANDS = {
  call: async () => (await import('./commands/call.js')).call,
  diagnose: async () => (await import('./commands/diagnose.js')).diagnose,
  questions: async () => (await import('./commands/questions.js')).questions,
  replay: async () => (await import('./commands/replay.js')).replayRecord,
  ticket: async () => (await import('./commands/ticket.js')).ticket,
  rules: async () => (await import('./commands/rules.js')).rules,
  reckon: async () => (await import('./commands/reckon.js')).reckon,
  read: async () => (await import('./commands/read.js')).readText,
  here: async () => (await import('./commands/here.js')).here,
  article: async () => (await import('./commands/article.js')).article,
} satisfies Readonly<Record<string, () => Promise<Command>>>;

function isCommand(word: string | undefined): word is keyof typeof COMMANDS {
  return word !== undefined && Object.hasOwn(COMMANDS, word);
}

/** Runs one command line and gives its exit status. Results go to stdout, talk and faults to stderr. */
export async function run(argv: readonly string[]): Promise<number> {
  try {
    const inputs = await ownOptions(commandOf(argv));
    const options = readOptions(argv, inputs);
    if (options.version && !options.help) {
      const { VERSION } = await import('../call/version.js');
      process.stdout.write(`${VERSION}\n`);
      return EXIT.done;
    }
    if (options.help || options.command === undefined) {
      const asked = options.help;
      (asked ? process.stdout : process.stderr).write(`${helpOn(options.command)}\n`);
      return asked ? EXIT.done : EXIT.wrongUse;
    }
    if (!isCommand(options.command)) throw unknownWord('command', options.command, Object.keys(COMMANDS));
    const command: Command = await COMMANDS[options.command]();
    return await command(options);
  } catch (fault) {
    if (!(fault instanceof InputFault || fault instanceof MachineFault)) throw fault;
    process.stderr.write(`${printable(fault.message, LONGEST)}\n`);
    return fault.exit;
  }
}

/** Options that only this command has. */
async function ownOptions(command: string | undefined): Promise<readonly string[]> {
  if (command === 'reckon') return (await import('../call/topics.js')).inputIds();
  if (command === 'here') return ['agree', 'camera', 'router', 'name'];
  return command === 'rules' ? ['calls'] : [];
}

function helpOn(command: string | undefined): string {
  return isCommand(command) ? say(`help.${command}`) : say('cli.usage');
}

/** Longer than any sentence of ours, filled. */
const LONGEST = 2000;

/** Says that the results could not be written, and gives the exit status for it. */
export function toldUnwritten(reason: string): number {
  process.stderr.write(`${say('cli.unwritten', { reason })}\n`);
  return EXIT.machine;
}
