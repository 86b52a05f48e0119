import { InputFault, MachineFault } from '../files/faults.js';
import { say } from '../messages/say.js';
import { type Options, readOptions } from './options.js';

/** Exit statuses, stable and documented: what a script may rely on. */
export const EXIT = { done: 0, failed: 1, wrongUse: 2, machine: 3, interrupted: 130 } as const;

type Command = (options: Options) => Promise<number>;

/** Each command loads only when it is given. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  call: async () => (await import('./commands/call.js')).call,
  diagnose: async () => (await import('./commands/diagnose.js')).diagnose,
  questions: async () => (await import('./commands/questions.js')).questions,
  replay: async () => (await import('./commands/replay.js')).replayRecord,
  ticket: async () => (await import('./commands/ticket.js')).ticket,
  rules: async () => (await import('./commands/rules.js')).rules,
};

/** Runs one command line and gives its exit status. Results go to stdout, talk and faults to stderr. */
export async function run(argv: readonly string[]): Promise<number> {
  try {
    const options = readOptions(argv);
    if (options.help || options.command === undefined) {
      const asked = options.help;
      (asked ? process.stdout : process.stderr).write(`${say('cli.usage')}\n`);
      return asked ? EXIT.done : EXIT.wrongUse;
    }
    const load = Object.hasOwn(COMMANDS, options.command) ? COMMANDS[options.command] : undefined;
    if (!load) {
      const { nearestCommand } = await import('./nearest-command.js');
      throw new InputFault({
        id: 'cli.unknown-command',
        with: { command: options.command, nearest: nearestCommand(options.command, Object.keys(COMMANDS)) },
      });
    }
    return await (await load())(options);
  } catch (fault) {
    if (!(fault instanceof InputFault || fault instanceof MachineFault)) throw fault;
    process.stderr.write(`${fault.message}\n`);
    return fault.exit;
  }
}
