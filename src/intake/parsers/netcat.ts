import { HAS } from '../looks.js';
import type { Parser } from '../parser.js';
import type { PortTry } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, address6 } from '../unix/words.js';

const NAME = String.raw`(\S{1,255}?)`;
const FORMS: readonly (readonly [RegExp, boolean])[] = [
  // OpenBSD and macOS.
  [
    new RegExp(
      String.raw`^Connection to ${NAME}(?: \((\S{1,64})\))? (?:port )?(\d{1,5})(?: port)? \[.{1,60}\] succeeded!?$`,
    ),
    true,
  ],
  [
    new RegExp(
      String.raw`^\S{1,60}: connectx? to ${NAME}(?: \((\S{1,64})\))? port (\d{1,5}) \(.{1,10}\) (?:failed|timed out): .{1,120}$`,
    ),
    false,
  ],
  // The traditional one: (UNKNOWN) [172.23.40.57] 80 (http) open
  [/^(\S{1,255}) \[(\S{1,64})\] (\d{1,5}) \(.{1,30}\) open$/, true],
  [/^(\S{1,255}) \[(\S{1,64})\] (\d{1,5}) \(.{1,30}\) ?: .{1,120}$/, false],
  // busybox.
  [/^(\S{1,255}) \((\S{1,64}):(\d{1,5})\) open$/, true],
  [/^nc: (\S{1,255}) \((\S{1,64}):(\d{1,5})\): .{1,120}$/, false],
  // Ncat names the target only where it worked.
  [/^Ncat: Connected to ([^\s:]{1,255})()?:(\d{1,5})\.$/, true],
];
/** A quick look, as every line of a text is asked. */
const QUICK = / open$|^Connection to |\) ?: |^Ncat: |: connectx? to |^nc: /;
const NCAT = /^Ncat: /;

/** `nc -vz` of OpenBSD, macOS, Debian (traditional) and busybox, and `ncat -vz`. */
export const netcat: Parser = {
  name: 'netcat',
  source: 'nc(1) of OpenBSD, macOS and busybox, nc.traditional(1), ncat(1)',
  claims: (lines, from) => firstWhere(lines, from, (text) => tryOf(text, 0) !== undefined, HAS.blank),
  take: (lines, from) => {
    const ports: PortTry[] = [];
    const understood = walk(lines, from, (text, line) => {
      const found = tryOf(text, line);
      if (found !== undefined) ports.push(found);
      return found !== undefined || NCAT.test(text) ? 'read' : 'end';
    });
    return { seen: { ports }, lines: understood };
  },
};

function tryOf(text: string, line: number): PortTry | undefined {
  if (!QUICK.test(text)) return undefined;
  for (const [form, isOpen] of FORMS) {
    const [, name, place, digits] = form.exec(text) ?? [];
    const port = Number(digits ?? Number.NaN);
    if (name === undefined || !(port >= 1 && port <= 65_535)) continue;
    const address = address4(place ?? name);
    // A door (left:1) can be open, too.
    if (place !== undefined && place !== '' && address === undefined && address6(place) === undefined)
      continue;
    const target = name === '(UNKNOWN)' ? (place ?? name) : name;
    return { target, ...(address !== undefined && { address }), port, isOpen, line };
  }
  return undefined;
}
