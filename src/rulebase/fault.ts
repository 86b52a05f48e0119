import type { Sentence } from '../messages/say.js';

/** An error keeps the rule base from loading; a warning does not. */
export type Grade = 'error' | 'warning';

/** One thing wrong in a rule base: where it stands, and a sentence that says what to write instead. */
export interface RuleFault {
  /** Path inside `rules/`, with forward slashes. */
  readonly file: string;
  /** JSON pointer into the file (RFC 6901); the whole file is the empty pointer. */
  readonly pointer: string;
  readonly grade: Grade;
  readonly says: Sentence;
}

export function error(file: string, pointer: string, says: Sentence): RuleFault {
  return { file, pointer, grade: 'error', says };
}

export function warning(file: string, pointer: string, says: Sentence): RuleFault {
  return { file, pointer, grade: 'warning', says };
}

export function isError(fault: RuleFault): boolean {
  return fault.grade === 'error';
}

/** Faults in the order a person works them off: by file, then by place in the file. */
export function inOrder(faults: readonly RuleFault[]): readonly RuleFault[] {
  const key = (fault: RuleFault) => `${fault.file}\n${fault.pointer}\n${fault.says.id}`;
  return [...faults].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}
