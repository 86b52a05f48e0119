import { printable } from '../messages/printable.js';
import { inWords, type MessageId, type Sentence } from '../messages/say.js';

/** What the person gave cannot be used: a wrong name, a damaged file. The command ends with exit status 2. */
export class InputFault extends Error {
  override readonly name = 'InputFault';
  readonly exit = 2;
  readonly sentence: Sentence;

  constructor(sentence: Sentence, cause?: unknown) {
    super(inWords(sentence), cause === undefined ? undefined : { cause });
    this.sentence = sentence;
  }
}

/** The computer cannot do it now: a full disk, a missing right. The command ends with exit status 3. */
export class MachineFault extends Error {
  override readonly name = 'MachineFault';
  readonly exit = 3;
  readonly sentence: Sentence;

  constructor(sentence: Sentence, cause?: unknown) {
    super(inWords(sentence), cause === undefined ? undefined : { cause });
    this.sentence = sentence;
  }
}

export type Fault = InputFault | MachineFault;

/** Error codes of POSIX.1-2017 (System Interfaces, 2.3 Error Numbers), with the fault each one is. */
const BY_CODE: Readonly<Record<string, readonly [typeof InputFault | typeof MachineFault, MessageId]>> = {
  ENOENT: [InputFault, 'files.missing'],
  EISDIR: [InputFault, 'files.is-folder'],
  ENOTDIR: [InputFault, 'files.not-folder'],
  EEXIST: [InputFault, 'files.exists'],
  ELOOP: [InputFault, 'files.links-loop'],
  ENAMETOOLONG: [InputFault, 'files.name-too-long'],
  EACCES: [MachineFault, 'files.forbidden'],
  EPERM: [MachineFault, 'files.forbidden'],
  EROFS: [MachineFault, 'files.read-only'],
  ENOSPC: [MachineFault, 'files.full'],
  EDQUOT: [MachineFault, 'files.quota'],
  EMFILE: [MachineFault, 'files.too-many-open'],
  ENFILE: [MachineFault, 'files.too-many-open'],
};

/** The POSIX code of an error of Node's file system, or undefined for any other error. */
export function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error) || !('syscall' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}

/**
 * The fault that an error of the file system means for a person, with the original as its cause.
 * A fault comes back as it is. Any other error is a fault of ours and is thrown on.
 */
export function faultOf(error: unknown, path: string): Fault {
  if (error instanceof InputFault || error instanceof MachineFault) return error;
  const code = codeOf(error);
  if (code === undefined) throw error;
  const [Kind, id] = BY_CODE[code] ?? [MachineFault, 'files.other' as const];
  return new Kind({ id, with: { path: printable(path), code } }, error);
}

/** Does some work on a path, and throws what goes wrong in the file system as a fault. */
export function attempt<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw faultOf(error, path);
  }
}
