import { splitLines } from './line-ends.js';
import type { Line } from './parser.js';
import { plainCharacters } from './plain-characters.js';
import { repaired } from './repaired.js';

/** `> `, `>> `, `> > ` and `| `, as mail programs put them before what they quote. */
const QUOTING = /^ ?(?:> ?|\| ){1,40}/;
const FENCE = /^ {0,3}(?:`{3,}|~{3,})[\w+.#-]{0,20}$/;

/** A label whose value the mail program pushed on to the next line. */
const LEADER_WITHOUT_VALUE = /\.(?: ?\.){2,}[ .]*:$/;
const LONE_VALUE = /^ *((?:[0-9]{1,3}\.|[0-9A-Fa-f]{1,4}:|[0-9A-Fa-f]{2}-|::)[0-9A-Za-z.:%()/-]{1,60})$/;

/**
 * The lines of a pasted text, fit for the parsers: characters mended and made plain, mail quoting and code fences
 * gone, no blanks at the end, a value that was wrapped away from its dotted leader put back. Each line has the number
 * it has in the text as it came; lines that fell away leave a gap.
 */
export function linesOf(text: string): readonly Line[] {
  const lines: Line[] = [];
  for (const [place, raw] of splitLines(repaired(text)).entries()) {
    const line = cleanLine(raw);
    const last = lines.at(-1);
    const value = last !== undefined && endsInLeader(last.text) ? LONE_VALUE.exec(line)?.[1] : undefined;
    if (last === undefined || value === undefined) lines.push({ number: place + 1, text: line });
    else lines[lines.length - 1] = { number: last.number, text: `${last.text} ${value}` };
  }
  return lines;
}

function cleanLine(raw: string): string {
  const line = plainCharacters(raw).replace(QUOTING, '').trimEnd();
  return FENCE.test(line) ? '' : line;
}

/** Looks at the end only: a leader is never longer than a console line. */
function endsInLeader(line: string): boolean {
  return line.endsWith(':') && LEADER_WITHOUT_VALUE.test(line.slice(-80));
}
