import { existsSync } from 'node:fs';

/** Whether there is anything at this path. */
export function exists(path: string): boolean {
  return existsSync(path);
}
