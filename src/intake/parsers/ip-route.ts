import type { Line, Parser, Taken } from '../parser.js';
import type { Route } from '../seen.js';
import { type Destination, destinationOf, routeOf } from '../unix/route-words.js';
import { firstWhere, type Step, shortText, walk } from '../unix/walk.js';
import { address6, after, sides, wordsOf } from '../unix/words.js';
import { neighbourOf } from './ip-neighbour.js';

const TYPES = new Set(['unreachable', 'blackhole', 'prohibit', 'throw', 'broadcast', 'local', 'multicast']);
const SECOND = new Set(['via', 'dev', 'proto', 'scope', 'metric', 'nhid', 'src', 'table']);
/** A quick look, as every line of a text is asked. */
const FIRST =
  /^\s{0,20}(?:[0-9a-f:.]{2,45}(?:\/\d{1,3})?|default|unreachable|blackhole|prohibit|throw|broadcast|local|multicast)(?: |$)/i;
const CACHE = /^\s{0,20}cache\b/;
const HOP = /^\s{0,20}nexthop /;

/** `ip route` and `ip route get`. Routes that lead nowhere, and those of IPv6, are understood and not given. */
export const ipRoute: Parser = {
  name: 'ip-route',
  source: 'ip-route(8) of iproute2',
  claims: (lines, from) => firstWhere(lines, from, (text, index) => isRoute(text, lines[index + 1])),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const routes: Route[] = [];
  let pending: Destination | undefined;
  const readLine = (text: string, line: number, index: number): Step => {
    const words = wordsOf(text);
    if (words[0] === 'nexthop') {
      if (pending !== undefined) routes.push(routeOf(pending, words, line));
      return 'read';
    }
    if (!isRoute(text, lines[index + 1])) return CACHE.test(text) ? 'read' : 'end';
    pending = address6(after(words, 'via')) === undefined ? destinationOf(words[0]) : undefined;
    const leads = words.includes('via') || words.includes('dev');
    if (pending !== undefined && leads) routes.push(routeOf(pending, words, line));
    return 'read';
  };
  const understood = walk(lines, from, readLine);
  return { seen: { routes }, lines: understood };
}

/** A destination stands alone on its line where several next hops follow it. */
function isRoute(text: string, next: Line | undefined): boolean {
  if (!FIRST.test(text)) return false;
  const words = wordsOf(text);
  const [first = '', second = '', third = ''] = words;
  if (TYPES.has(first)) return isPlace(second) && (third === '' || SECOND.has(third));
  if (!isPlace(first)) return false;
  if (words.length === 1) return HOP.test(shortText(next));
  if (second === 'via' && third !== 'inet6' && !isPlace(third)) return false;
  return SECOND.has(second) && neighbourOf(text, 0) === undefined;
}

function isPlace(word: string): boolean {
  return destinationOf(word) !== undefined || address6(sides(word)[0]) !== undefined;
}
