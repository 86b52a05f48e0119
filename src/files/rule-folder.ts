import { readdirSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { printable } from '../messages/printable.js';
import { MANIFEST } from '../rulebase/layout.js';
import { attempt, InputFault } from './faults.js';
import { MEBIBYTE, readLimited, textOf } from './read-limited.js';

/** One file of a rule base; `file` is relative to its folder, with forward slashes. */
export interface RuleFile {
  readonly file: string;
  readonly text: string;
}

/** A record fits on a screen; a file larger than this is no record. */
const LARGEST = MEBIBYTE;

/**
 * The *.json files of a rule base's folder and the folders below, sorted by name; `schema/`, and what begins
 * with a dot, left out. Throws an InputFault where there is no folder or no file `head`, where a link leads
 * to a folder read already, where a file is over 1 MiB or no text; a MachineFault where reading fails.
 */
export function readRuleFolder(folder: string, head: string = MANIFEST): readonly RuleFile[] {
  const files = jsonFiles(folder, '', new Set());
  if (!files.includes(head)) {
    const id = head === MANIFEST ? 'files.rules-no-manifest' : 'files.rules-no-head';
    throw new InputFault({ id, with: { path: printable(folder), head } });
  }
  return files.map((file) => ({ file, text: readText(join(folder, file)) }));
}

/** The text of a packed rule base, at most 64 MiB. */
export function readLargeText(path: string): string {
  return textOf(readLimited(path, 64 * MEBIBYTE), path);
}

/** The text of one file of a rule base, at most 1 MiB. */
export function readText(path: string): string {
  return textOf(readLimited(path, LARGEST), path);
}

function jsonFiles(root: string, below: string, seen: Set<string>): string[] {
  const folder = join(root, below);
  return attempt(folder, () => {
    const real = realpathSync(folder);
    if (seen.has(real))
      throw new InputFault({ id: 'files.rules-folder-twice', with: { path: printable(folder) } });
    seen.add(real);
    const found: string[] = [];
    for (const name of readdirSync(folder)) {
      const file = below === '' ? name : `${below}/${name}`;
      if (name.startsWith('.') || file === 'schema') continue;
      if (isFolder(join(root, file))) found.push(...jsonFiles(root, file, seen));
      else if (name.endsWith('.json')) found.push(file);
    }
    return found.sort();
  });
}

function isFolder(path: string): boolean {
  return attempt(path, () => statSync(path).isDirectory());
}
