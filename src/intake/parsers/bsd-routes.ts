import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Route } from '../seen.js';
import { type Destination, destinationOf } from '../unix/route-words.js';
import { firstWhere, shortText, walk } from '../unix/walk.js';
import { address4, address6, sides, wordsOf } from '../unix/words.js';

const FLAGS = /^[A-Za-z1-3]{1,14}$/;
const ADAPTER_HEADS = new Set(['Netif', 'Iface', 'Interface', 'Netif/Exp']);
const TITLES = /^(?:Routing tables(?: \(.{1,60}\))?|Internet6?:)$/;
const SHORT = /^\d{1,3}(?:\.\d{1,3}){0,3}$/;

/** `netstat -rn` of macOS and the BSDs. The part for IPv6 is understood and not given. */
export const bsdRoutes: Parser = {
  name: 'bsd-routes',
  source: 'netstat(1) of macOS, FreeBSD and OpenBSD',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => headOf(text) !== undefined || isTitle(lines, text, index),
      HAS.colon,
      HAS.blank,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const routes: Route[] = [];
  let column: number | undefined;
  let isIpv6 = false;
  const understood = walk(lines, from, (text, line) => {
    const head = headOf(text);
    if (head !== undefined || TITLES.test(text)) {
      column = head;
      if (head === undefined) isIpv6 = text === 'Internet6:';
      return 'read';
    }
    const words = wordsOf(text);
    if (column === undefined || !FLAGS.test(words[2] ?? '') || words[column] === undefined) return 'end';
    const isOther = isIpv6 || isLeftOut(words);
    const route = isOther ? undefined : routeOf(words, column, line);
    if (route !== undefined) routes.push(route);
    return isOther || route !== undefined ? 'read' : 'end';
  });
  return { seen: { routes }, lines: understood };
}

/** A title counts only above a table: `Internet:` can head anything. */
function isTitle(lines: readonly Line[], text: string, index: number): boolean {
  if (!TITLES.test(text)) return false;
  return [1, 2, 3].some((step) => headOf(shortText(lines[index + step])) !== undefined);
}

/** The column of the adapter, where the line is the head of a table. */
function headOf(text: string): number | undefined {
  if (!/^Destination\s{1,60}Gateway\s{1,60}Flags\s/.test(text)) return undefined;
  const words = wordsOf(text);
  // Linux has one word of the mask between, and begins with it.
  const column = words.findIndex((word) => ADAPTER_HEADS.has(word));
  return column < 0 ? undefined : column;
}

function routeOf(words: readonly string[], column: number, line: number): Route | undefined {
  const destination = shortDestination(words[0] ?? '');
  const adapter = words[column];
  if (destination === undefined || adapter === undefined) return undefined;
  const via = address4(words[1]);
  return { ...destination, ...(via !== undefined && { via }), adapter, line };
}

/** The BSDs leave out noughts at the end: `172.23.40/24`, and `127` for the whole of 127.0.0.0/8. */
function shortDestination(word: string): Destination | undefined {
  if (word === 'default') return destinationOf(word);
  const [address, length] = sides(word);
  if (!SHORT.test(address)) return undefined;
  const given = address.split('.');
  const noughts = Array<string>(4 - given.length).fill('0');
  return destinationOf(`${[...given, ...noughts].join('.')}/${length ?? 8 * given.length}`);
}

/** A route of IPv6, or that to everybody, which is no address of anybody. */
function isLeftOut([to = '', gateway]: readonly string[]): boolean {
  return to.includes(':') || to.startsWith('255.255.255.255') || address6(gateway) !== undefined;
}
