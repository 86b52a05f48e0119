import type { NeighbourState } from '../seen.js';

const STATES: ReadonlyMap<string, NeighbourState> = new Map([
  ['REACHABLE', 'reachable'],
  ['STALE', 'stale'],
  ['DELAY', 'stale'],
  ['PROBE', 'stale'],
  ['PERMANENT', 'static'],
  ['NOARP', 'static'],
  ['FAILED', 'failed'],
  ['INCOMPLETE', 'failed'],
  ['NONE', 'unknown'],
]);

/** The state that Linux writes in capitals; DELAY and PROBE are entries that wait to be proved again. */
export function neighbourState(word: string | undefined): NeighbourState | undefined {
  return word === undefined ? undefined : STATES.get(word);
}
