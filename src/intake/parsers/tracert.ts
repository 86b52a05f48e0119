import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Hop, Lookup, Trace } from '../seen.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { isStopped } from '../windows/ping-words.js';
import { hopRow, isUnfinished, restOfAddress, tracertHead, troubledHop } from '../windows/tracert-lines.js';
import { DONE, NOT_RESOLVED } from '../windows/tracert-words.js';
import { walkWide } from '../windows/walk.js';
import { smallLetters, wordBetween } from '../windows/word-between.js';

const LONGEST_DONE = 60;
/** One of these stands in each of the phrases for a name that was not found. */
const MAY_BE_MISSING = /s[yi]st|zielname|систем|系统|システム/i;

/**
 * `tracert` of Windows, in any language. A name that was not found is no trace but a lookup that failed. Who complains
 * that the target is out of reach is a hop, be it the own computer.
 */
export const tracert: Parser = {
  name: 'tracert',
  source:
    'outputs published in English, German, French, Spanish, Portuguese, Italian, Dutch, Russian, Chinese and Japanese; Polish in part, Turkish from memory',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) =>
        hopRow(text)?.isSure === true ||
        tracertHead(lines, index) !== undefined ||
        missingIn(text) !== undefined,
      HAS.blank,
      HAS.foreign,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const line = lines[from]?.number ?? 0;
  const missing = missingIn(shortText(lines[from]));
  if (missing !== undefined) {
    const lookup: Lookup = { name: missing, addresses: [], outcome: 'failed', line };
    return { seen: { lookups: [lookup] }, lines: new Set([line]) };
  }
  const head = tracertHead(lines, from);
  const hops: Hop[] = [];
  let rest = -1;
  const understood = walkWide(lines, from, (text, number, index) => {
    if (index <= (head?.last ?? -1) || index === rest) return 'read';
    const more = restOfAddress(lines, index);
    if (more !== '') rest = index + 1;
    const last = hops.at(-1)?.number ?? 0;
    const hop = hopRow(`${text}${more}`) ?? troubledHop(text, last + 1);
    if (hop !== undefined) {
      if (hop.number <= last) return 'end';
      hops.push({
        number: hop.number,
        ...(hop.address !== undefined && { address: hop.address }),
        line: number,
      });
      return 'read';
    }
    return isEnd(text) || isUnfinished(text) || isStopped(text) ? 'read' : 'end';
  });
  const address = head?.target.address;
  const trace: Trace = {
    target: head?.target.name ?? '',
    ...(address !== undefined && { address }),
    hops,
    line,
  };
  return { seen: { traces: [trace] }, lines: understood };
}

/** The name that was not found. */
function missingIn(text: string): string | undefined {
  return MAY_BE_MISSING.test(text) ? wordBetween(text, NOT_RESOLVED) : undefined;
}

function isEnd(text: string): boolean {
  if (text.length > LONGEST_DONE) return false;
  const small = smallLetters(text);
  return DONE.some((words) => small.includes(words));
}
