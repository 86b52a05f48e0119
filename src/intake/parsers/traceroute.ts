import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Hop, Trace } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4 } from '../unix/words.js';

const HEAD = /^traceroute6? to (\S{1,255}) \((\S{1,64})\)[,:]? /;
/** ` 1  172.23.40.1 (172.23.40.1)  0.5 ms`, without a name behind `-n`, or only stars. */
const ROW = /^\s{0,4}(\d{1,3})\s{1,4}(\*|\S{1,255} )/;
const MORE = /^\s{2,8}(?:\S{1,255} \(\S{1,64}\)|\d{1,3}(?:\.\d{1,3}){3})\s{1,4}[\d.,]{1,12} ms/;
const PLACE = /(?:\((\d{1,3}(?:\.\d{1,3}){3})\)|(?:^|\s)(\d{1,3}(?:\.\d{1,3}){3})) /;
const TIME = /\s[\d.,]{1,12} ms\b/;
const STARS = /^\s{0,4}\d{1,3}(?:\s{1,4}\*){1,10}$/;

/** `traceroute` of Linux, busybox, macOS and the BSDs. */
export const traceroute: Parser = {
  name: 'traceroute',
  source: 'traceroute(8) of Linux, busybox, macOS and FreeBSD',
  claims: (lines, from) =>
    firstWhere(lines, from, (text) => HEAD.test(text) || hopOf(text, 0)?.address !== undefined, HAS.blank),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const hops: Hop[] = [];
  let target = '';
  let address: Address | undefined;
  const understood = walk(lines, from, (text, line, index) => {
    const [, name, place] = HEAD.exec(text) ?? [];
    if (name !== undefined) {
      if (index > from) return 'end';
      target = name;
      address = address4(place);
      return 'read';
    }
    const hop = hopOf(text, line);
    if (hop !== undefined) hops.push(hop);
    return hop !== undefined || (hops.length > 0 && MORE.test(text)) ? 'read' : 'end';
  });
  const trace: Trace = {
    target,
    ...(address !== undefined && { address }),
    hops,
    line: lines[from]?.number ?? 0,
  };
  return { seen: { traces: [trace] }, lines: understood };
}

/** Windows prints the times first and a text behind its stars, so that its rows are none. */
function hopOf(text: string, line: number): Hop | undefined {
  const number = Number(ROW.exec(text)?.[1] ?? Number.NaN);
  if (Number.isNaN(number)) return undefined;
  if (STARS.test(text)) return { number, line };
  if (!TIME.test(text)) return undefined;
  const [, inside, bare] = PLACE.exec(text) ?? [];
  const address = address4(inside ?? bare);
  return { number, ...(address !== undefined && { address }), line };
}
