import { execFile } from 'node:child_process';
import { win32 } from 'node:path';
import { InputFault, MachineFault } from '../files/faults.js';
import { MEBIBYTE, readLimited } from '../files/read-limited.js';
import type { Argv } from './commands.js';

/** How a command ended. */
export type Ran =
  | {
      readonly kind: 'ended';
      readonly status: number;
      readonly output: Uint8Array;
      readonly errors: Uint8Array;
    }
  | { readonly kind: 'missing' | 'late' | 'too-long' | 'not-started' };

/** What is asked of this computer, so that tests can answer in its place. */
export interface Machine {
  /** Runs a program without a shell, for so long at most. Never throws. */
  readonly run: (argv: Argv, milliseconds: number) => Promise<Ran>;
  /** Reads an ordinary file; nothing where it is missing, too long or not to be read. */
  readonly read: (path: string) => Uint8Array | undefined;
}

/** More than this nobody's network needs. */
const MOST_BYTES = MEBIBYTE;

/** This computer itself. */
export function thisMachine(
  platform: string = process.platform,
  env: NodeJS.ProcessEnv = process.env,
): Machine {
  return { run: (argv, milliseconds) => run(argv, milliseconds, platform, env), read };
}

/**
 * Where a program is looked for. On Windows the folder that happens to be open comes before PATH (libuv, search_path
 * in process.c), so that only the whole path is safe. Elsewhere the folders of network commands may be missing in PATH.
 */
export function placeOf(name: string, platform: string, env: NodeJS.ProcessEnv): string {
  if (platform !== 'win32') return name;
  return win32.join(env.SystemRoot ?? 'C:\\Windows', 'System32', `${name}.exe`);
}

function run(
  [name, ...words]: Argv,
  milliseconds: number,
  platform: string,
  env: NodeJS.ProcessEnv,
): Promise<Ran> {
  const isWindows = platform === 'win32';
  const file = placeOf(name, platform, env);
  const options = {
    cwd: isWindows ? win32.dirname(file) : '/',
    env: {
      ...env,
      LC_ALL: 'C',
      ...(!isWindows && { PATH: `${env.PATH ?? '/usr/bin:/bin'}:/usr/sbin:/sbin` }),
    },
    encoding: 'buffer',
    timeout: milliseconds,
    killSignal: 'SIGKILL',
    maxBuffer: MOST_BYTES,
    windowsHide: true,
    shell: false,
  } as const;
  return new Promise((resolve) => {
    try {
      const child = execFile(file, words, options, (error, output, errors) => {
        resolve(error === null ? { kind: 'ended', status: 0, output, errors } : endOf(error, output, errors));
      });
      child.stdin?.end();
    } catch {
      resolve({ kind: 'not-started' });
    }
  });
}

function endOf(
  error: { readonly code?: unknown; readonly killed?: boolean },
  output: Uint8Array,
  errors: Uint8Array,
): Ran {
  const { code, killed } = error;
  if (code === 'ERR_CHILD_PROCESS_STDIO_MAXBUFFER') return { kind: 'too-long' };
  if (code === 'ENOENT') return { kind: 'missing' };
  if (killed === true) return { kind: 'late' };
  return typeof code === 'number' ? { kind: 'ended', status: code, output, errors } : { kind: 'not-started' };
}

function read(path: string): Uint8Array | undefined {
  try {
    return readLimited(path, MOST_BYTES);
  } catch (error) {
    if (error instanceof InputFault || error instanceof MachineFault) return undefined;
    throw error;
  }
}
