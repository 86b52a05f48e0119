import { parseArgs } from 'node:util';
import { nearestName } from '../call/nearest-name.js';
import { InputFault } from '../files/faults.js';
import { printable } from '../messages/printable.js';

/** A command line, taken apart. */
export interface Options {
  readonly command: string | undefined;
  readonly operands: readonly string[];
  readonly record: string | undefined;
  /** Rule bases in the order given: the first whole, the others additions to it. */
  readonly rules: readonly string[];
  readonly site: boolean;
  readonly json: boolean;
  readonly unmasked: boolean;
  readonly csv: boolean;
  readonly html: boolean;
  readonly help: boolean;
  readonly version: boolean;
  /** What was given for the options that only this command has, as typed. */
  readonly given: Readonly<Record<string, string>>;
}

interface Option {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
}

const OPTIONS: Readonly<Record<string, Option>> = {
  record: { type: 'string' },
  rules: { type: 'string' },
  site: { type: 'boolean' },
  json: { type: 'boolean' },
  unmasked: { type: 'boolean' },
  csv: { type: 'boolean' },
  html: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
};

/** The first word of a command line that is neither an option nor its value. */
export function commandOf(argv: readonly string[]): string | undefined {
  return parseArgs({ args: [...argv], allowPositionals: true, strict: false, options: OPTIONS })
    .positionals[0];
}

/**
 * Takes a command line apart; `inputs` are options that only this command has. Throws an InputFault that
 * names the option that does not fit, and the nearest one.
 */
export function readOptions(argv: readonly string[], inputs: readonly string[] = []): Options {
  const own = Object.fromEntries(inputs.map((id): [string, Option] => [id, { type: 'string' }]));
  const options = { ...own, ...OPTIONS };
  const args = [...argv];
  const { tokens, positionals } = parseArgs({
    args,
    allowPositionals: true,
    strict: false,
    options,
    tokens: true,
  });
  const given = new Map<string, string>();
  const several = new Map<string, readonly string[]>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    refuseMisfit(options, token);
    given.set(token.name, token.value ?? '');
    several.set(token.name, [...(several.get(token.name) ?? []), token.value ?? '']);
  }
  const [command, ...operands] = positionals;
  return {
    command,
    operands,
    record: given.get('record'),
    rules: several.get('rules') ?? [],
    site: given.has('site'),
    json: given.has('json'),
    unmasked: given.has('unmasked'),
    csv: given.has('csv'),
    html: given.has('html'),
    help: given.has('help'),
    version: given.has('version'),
    given: Object.fromEntries([...given].filter(([name]) => inputs.includes(name))),
  };
}

interface Token {
  readonly name: string;
  readonly rawName: string;
  readonly value?: string | undefined;
  readonly inlineValue?: boolean | undefined;
}

function refuseMisfit(options: Readonly<Record<string, Option>>, token: Token): void {
  const { name, rawName, value, inlineValue } = token;
  const type = Object.hasOwn(options, name) ? options[name]?.type : undefined;
  if (type === undefined) {
    const known = Object.keys(options).map((one) => `--${one}`);
    throw unknownWord('option', rawName, known);
  }
  if (type === 'boolean' && value !== undefined)
    throw new InputFault({ id: 'cli.option-alone', with: { option: rawName } });
  // A word that looks like an option is one: "--record --json" has lost its file.
  const lost = value === undefined || value === '' || (inlineValue !== true && /^-{1,2}[a-z]/i.test(value));
  if (type === 'string' && lost) throw new InputFault({ id: 'cli.option-wants', with: { option: rawName } });
}

/** The fault of a word that is none of the known ones, with the nearest of them where one is near. */
export function unknownWord(kind: 'command' | 'option', word: string, known: readonly string[]): InputFault {
  const meant = nearestName(word, known);
  const filling = { word: printable(word, 60), nearest: meant ?? '' };
  return new InputFault({ id: `cli.unknown-${kind}${meant === undefined ? '' : '-near'}`, with: filling });
}

/** The only operand of a command that wants just one file. */
export function oneFile({ command = '', operands }: Options): string {
  const [file, extra] = operands;
  if (file === undefined) throw new InputFault({ id: 'cli.file-wanted', with: { command } });
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command, extra } });
  return file;
}
