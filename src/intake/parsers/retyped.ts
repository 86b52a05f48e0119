import type { Line, Parser, Taken } from '../parser.js';
import { type Devices, devicesOf } from '../retyped/devices.js';
import { lookAt } from '../retyped/look.js';
import { LONGEST_GAP, mayHold, runFrom, tells } from '../retyped/run.js';

/** What the last claim found, so that a long run is not read twice. */
const CLAIMED = new WeakMap<readonly Line[], { readonly start: number; readonly devices: Devices }>();

/** What people type off the network page of a phone, a camera or a router, in whatever words and order. */
export const retyped: Parser = {
  name: 'retyped',
  source: 'from memory of such pages; the words for mask, gateway and prefix of each language were looked up',
  readsLeftovers: true,
  claims: (lines, from) => {
    let behind = from;
    for (let at = from; at < lines.length; at++) {
      const line = lines[at];
      if (line === undefined || !mayHold(line) || !tells(lookAt(line))) continue;
      const start = startOf(lines, behind, at);
      const { entries, end } = runFrom(lines, start);
      const devices = devicesOf(entries);
      if (devices.adapters.length > 0) {
        CLAIMED.set(lines, { start, devices });
        return start;
      }
      // The lines of a run that tells too little are not looked at again one by one.
      behind = Math.max(end, at + 1);
      at = behind - 1;
    }
    return -1;
  },
  take: (lines, from): Taken => {
    const claimed = CLAIMED.get(lines);
    const devices = claimed?.start === from ? claimed.devices : devicesOf(runFrom(lines, from).entries);
    const { adapters, lines: understood } = devices;
    return { seen: { adapters }, lines: understood };
  },
};

/** Headings and words for values stand a few lines above the first value. */
function startOf(lines: readonly Line[], from: number, first: number): number {
  let start = first;
  for (let at = first - 1; at >= from && at >= first - LONGEST_GAP; at--) {
    const line = lines[at];
    if (line === undefined || line.text === '') continue;
    const looked = lookAt(line);
    if (looked.isTalk) break;
    if (looked.heading !== undefined || looked.label !== undefined || looked.called !== undefined) start = at;
  }
  return start;
}
