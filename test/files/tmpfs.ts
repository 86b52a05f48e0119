import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A real disk of 64 KiB in memory. */
export interface TinyDisk {
  readonly folder: string;
  readonly makeReadOnly: () => void;
}

const run = (command: string, ...words: string[]) => execFileSync(command, words, { stdio: 'pipe' });

/** Mounts a tiny disk, works on it, and unmounts it whatever happens. */
export function onTinyDisk(work: (disk: TinyDisk) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-disk-'));
  try {
    run('mount', '-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', folder);
    try {
      work({ folder, makeReadOnly: () => run('mount', '-o', 'remount,ro', folder) });
    } finally {
      run('umount', '-l', folder);
    }
  } finally {
    rmdirSync(folder);
  }
}

/** Whether this process may mount a disk: it takes root on Linux. */
export function canMount(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return false;
  try {
    onTinyDisk(() => undefined);
    return true;
  } catch {
    return false;
  }
}
