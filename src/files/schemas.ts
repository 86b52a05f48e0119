import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { printable } from '../messages/printable.js';
import { attempt, InputFault } from './faults.js';
import { type RuleFile, readText } from './rule-folder.js';

/**
 * The `*.schema.json` files of a folder of schemas, sorted by name. Throws an InputFault where there is no
 * folder or no schema in it.
 */
export function readSchemas(folder: string): readonly RuleFile[] {
  const names = attempt(folder, () => readdirSync(folder)).filter((name) => name.endsWith('.schema.json'));
  if (names.length === 0)
    throw new InputFault({ id: 'files.rules-no-schemas', with: { path: printable(folder) } });
  return names.sort().map((file) => ({ file, text: readText(join(folder, file)) }));
}
