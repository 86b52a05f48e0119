import { parseArgs } from 'node:util';
import { InputFault } from '../files/faults.js';

/** A command line, taken apart. */
export interface Options {
  readonly command: string | undefined;
  readonly operands: readonly string[];
  readonly record: string | undefined;
  readonly rules: string | undefined;
  readonly site: boolean;
  readonly json: boolean;
  readonly unmasked: boolean;
  readonly help: boolean;
}

/** Takes a command line apart. Throws an InputFault that names the option it does not know. */
export function readOptions(argv: readonly string[]): Options {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        record: { type: 'string' },
        rules: { type: 'string' },
        site: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        unmasked: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
    const [command, ...operands] = positionals;
    return { command, operands, ...values, record: values.record, rules: values.rules };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const problem = error.message.split('. ')[0] ?? error.message;
    throw new InputFault({ id: 'cli.unknown-option', with: { problem: `${problem}.` } });
  }
}

/** The only operand of a command that wants just one file. */
export function oneFile({ command = '', operands }: Options): string {
  const [file, extra] = operands;
  if (file === undefined) throw new InputFault({ id: 'cli.file-wanted', with: { command } });
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command, extra } });
  return file;
}
