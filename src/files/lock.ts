import { rmSync } from 'node:fs';
import { printable } from '../messages/printable.js';
import { attempt, MachineFault } from './faults.js';
import { holderOf, makeMark, readMark, settledMark } from './lock-mark.js';
import { type Holder, stateOf, thisProcess } from './process-marks.js';

/** Lets go of a lock. Doing it twice does nothing the second time. */
export type Release = () => void;

/** A taker who clears a dead mark holds a mark of its own meanwhile; that one may be dead too, and so on. */
const DEEPEST = 3;

/** How often a mark may be gone again before it could be read. Each time, another one has let go of it. */
const TRIES = 50;

/**
 * Marks a record as open in this process: the file `<path>.lock`, which names the holder and which only one
 * can make. The mark of a process that has ended is taken over. Throws a MachineFault while another one
 * holds it.
 */
export function lock(path: string): Release {
  return take(path, `${path}.lock`, 0);
}

function take(path: string, mark: string, depth: number): Release {
  const mine = JSON.stringify(thisProcess());
  for (let tries = 0; tries < TRIES; tries += 1) {
    if (makeMark(mark, mine)) return releaseOf(mark, mine);
    const theirs = settledMark(mark);
    if (theirs === undefined) continue;
    const holder = holderOf(theirs);
    if (holder !== undefined && stateOf(holder) !== 'ended') throw busy(path, mark, holder);
    if (depth === DEEPEST) break;
    if (takeOver(path, mark, theirs, mine, depth)) return releaseOf(mark, mine);
  }
  throw busy(path, mark, undefined);
}

/** Only the holder of the inner mark removes a dead one: two takers could else remove each other's new mark. */
function takeOver(path: string, mark: string, theirs: string, mine: string, depth: number): boolean {
  const release = take(path, `${mark}.lock`, depth + 1);
  try {
    if (readMark(mark) === theirs) attempt(mark, () => rmSync(mark, { force: true }));
    return makeMark(mark, mine);
  } finally {
    release();
  }
}

function releaseOf(mark: string, mine: string): Release {
  let held = true;
  return () => {
    if (held) removeOwn(mark, mine);
    held = false;
  };
}

function removeOwn(mark: string, mine: string): void {
  try {
    if (readMark(mark) === mine) rmSync(mark, { force: true });
  } catch {
    // A mark that stays is taken over once this process has ended.
  }
}

function busy(path: string, mark: string, holder: Holder | undefined): MachineFault {
  const filling = { path: printable(path), lock: printable(mark) };
  if (holder === undefined) return new MachineFault({ id: 'files.record-lock-stuck', with: filling });
  const id = stateOf(holder) === 'elsewhere' ? 'files.record-busy-elsewhere' : 'files.record-busy';
  return new MachineFault({ id, with: { ...filling, pid: holder.pid, host: printable(holder.host) } });
}
