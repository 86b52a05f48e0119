import { execFileSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A real disk of 64 KiB in memory, for work that takes a while. */
export interface TinyDisk {
  readonly folder: string;
  readonly fillUp: () => void;
  readonly makeRoom: () => void;
  readonly makeReadOnly: () => void;
}

const run = (command: string, ...words: string[]): Buffer => execFileSync(command, words, { stdio: 'pipe' });

/** Mounts a tiny disk (it takes root on Linux), waits for the work on it, and unmounts it whatever happens. */
export async function withTinyDisk(work: (disk: TinyDisk) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-disk-'));
  const filler = join(folder, 'filler');
  try {
    run('mount', '-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', folder);
    try {
      await work({
        folder,
        fillUp: () => fill(filler),
        makeRoom: () => rmSync(filler),
        makeReadOnly: () => run('mount', '-o', 'remount,ro', folder),
      });
    } finally {
      run('umount', '-l', folder);
    }
  } finally {
    rmdirSync(folder);
  }
}

function fill(filler: string): void {
  try {
    for (;;) appendFileSync(filler, Buffer.alloc(4096));
  } catch {
    // It is full now.
  }
}
