import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A process, told from a later one of the same id by its start (clock ticks since boot). */
export interface Known {
  readonly pid: number;
  readonly ticks: string;
}

/** What a lab made: written before it is made. */
export interface Manifest {
  readonly id: string;
  readonly owner: Known;
  readonly namespaces: readonly string[];
  readonly processes: readonly Known[];
}

export const BASE = join(tmpdir(), 'whydark-lab');

/** The start of a process (proc(5), field 22), or '' where there is none. */
export function startTicks(pid: number): string {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return text.slice(text.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    return '';
  }
}

const alive = (known: Known) => known.ticks !== '' && startTicks(known.pid) === known.ticks;

/** Writes the manifest in one move. */
export function record(manifest: Manifest): void {
  const folder = join(BASE, manifest.id);
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'manifest.json');
  writeFileSync(`${file}.new`, JSON.stringify(manifest));
  renameSync(`${file}.new`, file);
}

function end(known: Known): void {
  if (!alive(known)) return;
  for (const target of [-known.pid, known.pid]) {
    try {
      process.kill(target, 'SIGKILL');
    } catch {
      // It has ended, or leads no group.
    }
  }
}

/** Ends the recorded processes and whatever runs in the recorded namespaces; removes those and the lab's folder. */
export function remove(manifest: Manifest): void {
  for (const known of manifest.processes) end(known);
  const there = new Set(spawnSync('ip', ['netns', 'list'], { encoding: 'utf8' }).stdout.split(/\s+/));
  const namespaces = manifest.namespaces.filter((name) => there.has(name));
  for (let round = 0; round < 3; round++) {
    const left = namespaces.flatMap((name) =>
      spawnSync('ip', ['netns', 'pids', name], { encoding: 'utf8' })
        .stdout.split('\n')
        .filter((line) => line !== ''),
    );
    if (left.length === 0) break;
    for (const pid of left) end({ pid: Number(pid), ticks: startTicks(Number(pid)) });
  }
  const batch = namespaces.map((name) => `netns del ${name}\n`).join('');
  spawnSync('ip', ['-force', '-batch', '-'], { input: batch });
  for (const name of manifest.namespaces) rmSync(join('/etc/netns', name), { recursive: true, force: true });
  rmSync(join(BASE, manifest.id), { recursive: true, force: true });
}

/** Removes what labs recorded whose own process has ended without removing it. */
export function sweep(): void {
  let names: readonly string[] = [];
  try {
    names = readdirSync(BASE);
  } catch {
    return;
  }
  for (const name of names) {
    try {
      const manifest = JSON.parse(readFileSync(join(BASE, name, 'manifest.json'), 'utf8')) as Manifest;
      if (!alive(manifest.owner)) remove(manifest);
    } catch {
      // Another sweep was faster, or the folder is not a lab's.
    }
  }
}
