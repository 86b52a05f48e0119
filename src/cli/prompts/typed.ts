/**
 * What was typed into a field: `line` can still be edited, `head` stands before it. An editor that goes over the
 * whole line at every key takes minutes for a pasted page, so it only ever holds the end of one.
 */
export interface Typed {
  readonly head: string;
  readonly line: string;
}

export const EMPTY: Typed = { head: '', line: '' };

/** So much of the end of the text stays in the editor. */
const EDITED = 128;

export function textOf({ head, line }: Typed): string {
  return head + line;
}

/** The first characters, at most so many, without touching the rest. */
export function beginningOf({ head, line }: Typed, length: number): string {
  return head.length >= length ? head.slice(0, length) : (head + line).slice(0, length);
}

/** After a key: the editor's line as it is now. Deleting at the front of the line brings some of the head back. */
export function added({ head, line: before }: Typed, line: string, deleted = false): Typed {
  if (deleted && before === '' && line === '' && head !== '') {
    const rest = [...head.slice(-EDITED)].slice(0, -1).join('');
    return { head: head.slice(0, -EDITED), line: rest };
  }
  return line.length > EDITED ? { head: head + line, line: '' } : { head, line };
}
