import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';

/** Who holds a lock. `started` tells two processes apart that had the same number one after the other. */
export interface Holder {
  readonly pid: number;
  readonly started: string;
  readonly host: string;
}

/** This process, as a holder. */
export function thisProcess(): Holder {
  return { pid: process.pid, started: startOf(process.pid) ?? '', host: hostname() };
}

/**
 * Is the holder still running? `elsewhere` for a process of another computer, which cannot be looked at.
 * A process that ended but was not yet fetched by its parent counts as ended.
 */
export function stateOf(holder: Holder): 'running' | 'ended' | 'elsewhere' {
  if (holder.host !== hostname()) return 'elsewhere';
  if (!exists(holder.pid)) return 'ended';
  const started = startOf(holder.pid);
  if (started === undefined || holder.started === '') return 'running';
  return started === holder.started ? 'running' : 'ended';
}

function exists(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/**
 * When a process started, as `<id of the boot>/<ticks since it>`; `ended` for a zombie, undefined where
 * the system does not tell. Fields 3 (state) and 22 (starttime) of /proc/<pid>/stat, man page proc(5).
 */
function startOf(pid: number): string | undefined {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    if (fields[0] === 'Z' || fields[0] === 'X') return 'ended';
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    return fields[19] === undefined ? undefined : `${boot}/${fields[19]}`;
  } catch {
    return undefined;
  }
}
