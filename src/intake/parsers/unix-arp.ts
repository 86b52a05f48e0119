import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Neighbour } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, macOf, says, wordsOf } from '../unix/words.js';

/** `? (172.23.40.1) at 02:00:5e:10:00:01 [ether] on eth0`: the two small words are translated. */
const ROW = /^(\S{1,255}) \((\d{1,3}(?:\.\d{1,3}){3})\) \S{1,12} (\S{1,40})(?:\s(.*))?$/;
/** `(incomplete)`, `<incomplete>` and their translations. */
const MISSING = /^[(<]\p{L}{1,30}[)>]$/u;
const BY_HAND = ['perm'];

/** `arp -a` and `arp -an` of net-tools, busybox, macOS and FreeBSD. */
export const unixArp: Parser = {
  name: 'unix-arp',
  source: 'arp(8) of net-tools, busybox, macOS and FreeBSD; the message files of net-tools',
  claims: (lines, from) =>
    firstWhere(lines, from, (text) => neighbourOf(text, 0) !== undefined, HAS.digit | HAS.round),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const neighbours: Neighbour[] = [];
  const understood = walk(lines, from, (text, line) => {
    const neighbour = neighbourOf(text, line);
    if (neighbour === undefined) return 'end';
    neighbours.push(neighbour);
    return 'read';
  });
  return { seen: { neighbours }, lines: understood };
}

function neighbourOf(text: string, line: number): Neighbour | undefined {
  const [, , place, hardware = '', rest = ''] = ROW.exec(text) ?? [];
  const address = address4(place);
  const mac = macOf(hardware);
  if (address === undefined || (mac === undefined && !MISSING.test(hardware))) return undefined;
  const adapter = adapterIn(wordsOf(rest));
  const state = mac === undefined ? 'failed' : says(rest, BY_HAND) ? 'static' : 'unknown';
  return {
    address,
    ...(mac !== undefined && { mac }),
    state,
    ...(adapter !== undefined && { adapter }),
    line,
  };
}

/** Behind `on`; in another language the last word, as only the BSDs, which do not translate, write more behind it. */
function adapterIn(words: readonly string[]): string | undefined {
  const on = words.indexOf('on');
  const adapter = on >= 0 ? words[on + 1] : words.at(-1);
  return adapter !== undefined && /^[A-Za-z][\w.:@-]{0,39}$/.test(adapter) ? adapter : undefined;
}
