import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Neighbour } from '../seen.js';
import { firstWhere, shortText, walk } from '../unix/walk.js';
import { address4, macOf, wordsOf } from '../unix/words.js';

/** The hardware types of net-tools that an address on a lead or Wi-Fi can have. */
const TYPE = /^[a-z][a-z0-9.-]{1,15}$/;
const FLAGS = /^[CMP*!]{1,5}$/;
const MISSING = /^[(<]\p{L}{1,30}[)>]$/u;
const NAME = /^[A-Za-z][\w.:@-]{0,39}$/;

/** `arp -n` of Linux and `arp -an` of OpenBSD: a table with a neighbour a row. */
export const arpTable: Parser = {
  name: 'arp-table',
  source: 'arp(8) of net-tools and of OpenBSD',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => {
        if (rowOf(text, 0) !== undefined) return true;
        return isHead(text) && rowOf(shortText(lines[index + 1]), 0) !== undefined;
      },
      HAS.blank,
      HAS.foreign,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const neighbours: Neighbour[] = [];
  const understood = walk(lines, from, (text, line, index) => {
    const row = rowOf(text, line);
    if (row !== undefined) neighbours.push(row);
    return row !== undefined || (index === from && isHead(text)) ? 'read' : 'end';
  });
  return { seen: { neighbours }, lines: understood };
}

/** Words only, none of them a number or an address. */
function isHead(text: string): boolean {
  return /^\p{L}[^\d:]{20,120}$/u.test(text);
}

function rowOf(text: string, line: number): Neighbour | undefined {
  if (!/^\s{0,20}\d/.test(text)) return undefined;
  const words = wordsOf(text);
  const address = address4(words[0]);
  const [, second = '', third = '', fourth = ''] = words;
  if (address === undefined) return undefined;
  const mac = macOf(third);
  if (mac !== undefined && TYPE.test(second) && FLAGS.test(fourth)) {
    const adapter = nameOf(words.at(-1));
    const state = fourth.includes('M') ? 'static' : 'unknown';
    return { address, mac, state, ...adapter, line };
  }
  const near = macOf(second);
  if (near !== undefined && NAME.test(third)) {
    return {
      address,
      mac: near,
      state: fourth === 'permanent' ? 'static' : 'unknown',
      ...nameOf(third),
      line,
    };
  }
  return MISSING.test(second) && NAME.test(words.at(-1) ?? '')
    ? { address, state: 'failed', ...nameOf(near === undefined ? words[2] : undefined), line }
    : undefined;
}

function nameOf(word: string | undefined): Pick<Neighbour, 'adapter'> {
  return word !== undefined && NAME.test(word) ? { adapter: word } : {};
}
