import { mkdirSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import { printable } from '../messages/printable.js';
import { attempt, codeOf, InputFault, MachineFault } from './faults.js';

/**
 * Where call records are kept: `$XDG_STATE_HOME/whydark/calls`, or `~/.local/state/whydark/calls`.
 * A relative XDG_STATE_HOME is ignored (XDG Base Directory Specification 0.8, "Basics").
 * Throws a MachineFault where there is neither it nor a home.
 */
export function callsFolder(env: { readonly XDG_STATE_HOME?: string | undefined }, home: string): string {
  const state = env.XDG_STATE_HOME ?? '';
  if (isAbsolute(state)) return join(state, 'whydark', 'calls');
  if (!isAbsolute(home)) throw new MachineFault({ id: 'files.no-home' });
  return join(home, '.local', 'state', 'whydark', 'calls');
}

/**
 * Makes the folder where it is missing, and those above it, for its owner only (mode 0700; XDG Base Directory
 * Specification 0.8, "Referencing this specification"). A folder that is there stays as it is. Throws an
 * InputFault where a file is in the way, else a MachineFault.
 */
export function makeCallsFolder(folder: string): void {
  attempt(folder, () => makeFolder(folder));
}

/** One by one: the recursive form of mkdir tells ENOENT of a disk that can only be read. */
function makeFolder(folder: string): void {
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() === true) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder));
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    if (codeOf(error) !== 'EEXIST') throw error;
    // Another process made it meanwhile, or a file is in the way.
    if (!statSync(folder).isDirectory())
      throw new InputFault({ id: 'files.not-folder', with: { path: printable(folder) } }, error);
  }
}
