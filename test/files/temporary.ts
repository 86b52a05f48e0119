import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder for the tests of one file, removed when they are done. */
export function temporaryFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'whydark-test-')));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
