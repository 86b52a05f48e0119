import type { Machine, Ran } from '../../src/here/machine.js';

/** A command that ended well and printed this. */
export function printed(output: string, status = 0): Ran {
  return { kind: 'ended', status, output: new TextEncoder().encode(output), errors: new Uint8Array() };
}

/** A machine that knows these commands and files only, and writes down what it was asked. */
export function standIn(
  commands: Readonly<Record<string, Ran>>,
  files: Readonly<Record<string, string>> = {},
): Machine & { readonly asked: readonly string[] } {
  const asked: string[] = [];
  return {
    asked,
    run: async (argv, milliseconds) => {
      asked.push(`${argv.join(' ')} (${milliseconds})`);
      return commands[argv.join(' ')] ?? { kind: 'missing' };
    },
    read: (path) => {
      asked.push(path);
      const text = files[path];
      return text === undefined ? undefined : new TextEncoder().encode(text);
    },
  };
}
