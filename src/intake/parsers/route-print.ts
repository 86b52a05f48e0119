import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Route } from '../seen.js';
import { type Destination, destinationOf } from '../unix/route-words.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { address4 } from '../unix/words.js';
import { nextIndex, walkWide } from '../windows/walk.js';

const DOTTED = String.raw`(\d{1,3}(?:\.\d{1,3}){3})`;
/** Where to, mask, gateway or words that there is none, own address, metric. */
const ROW = new RegExp(
  String.raw`^\s{0,24}${DOTTED}\s{1,24}${DOTTED}\s{1,24}(\d{1,3}(?:\.\d{1,3}){3}|\p{L}\D{0,40}?)\s{1,24}${DOTTED}\s{1,16}(\d{1,10})$`,
  'u',
);
/** Kept for the next start: no own address, and a word where the metric is the usual one. */
const KEPT = new RegExp(
  String.raw`^\s{0,24}${DOTTED}\s{1,24}${DOTTED}\s{1,24}${DOTTED}\s{1,16}(?:\d{1,10}|\p{L}.{0,40})$`,
  'u',
);
/** Windows XP names it once more below the table. */
const LAST_RESORT = new RegExp(String.raw`^\p{L}[^\d:]{2,60}:\s{1,30}${DOTTED}$`, 'u');
const IPV6_ROW = /^\s{0,8}\d{1,10}\s{1,12}\d{1,20}\s{1,12}[0-9a-f:]{2,45}\/\d{1,3}(?:\s{1,40}\S.{0,60})?$/i;
const FURTHER = /^\s{12,60}\S.{0,60}$/;
/** ` 12...02 00 5e 10 00 57 ......Network Connection`; Windows XP: `0x2 ...02 00 ...`. */
const ADAPTER =
  /^\s{0,6}(?:\d{1,10}|0x[0-9a-f]{1,8}) ?\.{3}(?:[0-9a-f]{2}(?: [0-9a-f]{2}){5,7} |\.{10,60}).{0,160}$/i;
const RULE = /^={40,120}$/;
/** A title, or the names of the columns: of digits only those of IPv4 and IPv6. */
const WORDS = /^\s{0,8}(?=.{0,40}\p{L})[^\d>=]{2,180}$/u;
const COLUMNS = /\S\s{2,30}\S.{0,60}\s{2,30}\S/;
const NOTHING = /^\s{1,8}[^\s\d:>]{1,20}(?: [^\s\d:>]{1,20}){0,2}$/;
const MOST_TITLES = 3;
const EVERYBODY = '255.255.255.255';

/**
 * `route print` and `netstat -r` of Windows, in any language. The part for IPv6 and what is kept for the next start are
 * understood and not given: what is kept need not be in force.
 */
export const routePrint: Parser = {
  name: 'route-print',
  source:
    'outputs published in English, German, French, Spanish, Portuguese, Italian, Russian, Chinese and Japanese; Dutch, Polish and Turkish from memory',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => rowIn(text) !== undefined || ADAPTER.test(text) || begins(lines, text, index),
      HAS.signs,
      HAS.blank,
      HAS.colon,
      HAS.foreign,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const routes: Route[] = [];
  const gateways = new Set<number>();
  let before: 'row' | 'title' | 'ipv6' | 'rule' = 'rule';
  const understood = walkWide(lines, from, (text, line, index) => {
    const isBelow = before;
    before = 'row';
    const row = rowIn(text);
    if (row !== undefined) {
      const { via } = row;
      if (row.mask.prefix === 0 && via !== undefined) gateways.add(via.bits);
      if (!isToEverybody(row)) routes.push({ ...row, line });
      return 'read';
    }
    const lastResort = address4(LAST_RESORT.exec(text)?.[1]);
    if (lastResort !== undefined && gateways.has(lastResort.bits)) return 'read';
    if (KEPT.test(text) || ADAPTER.test(text)) return 'read';
    if (IPV6_ROW.test(text) || (isBelow === 'ipv6' && FURTHER.test(text))) {
      before = 'ipv6';
      return 'read';
    }
    if (RULE.test(text)) {
      before = 'rule';
      return 'read';
    }
    if (isBelow === 'title' && NOTHING.test(text)) return 'read';
    if (isBelow === 'row' || isBelow === 'ipv6' || !isTitle(lines, text, index)) return 'end';
    before = 'title';
    return 'read';
  });
  return { seen: { routes }, lines: understood };
}

/** The first line of what was pasted: a rule, the title of a part, or the names of the columns. */
function begins(lines: readonly Line[], text: string, index: number): boolean {
  if (RULE.test(text)) return isTitle(lines, text, index);
  const mayBegin = text.endsWith(':') || /IPv[46]/.test(text) || COLUMNS.test(text);
  if (!mayBegin || !isTitleText(text) || !isTitle(lines, text, index)) return false;
  const next = shortText(lines[nextIndex(lines, index)]);
  if (text.endsWith(':')) return COLUMNS.test(next) && isTitleText(next);
  return COLUMNS.test(text) ? rowIn(next) !== undefined : /IPv[46]/.test(text) && RULE.test(next);
}

/** A rule or a title of the table: within a few lines there is a row of it, or the word that there is none. */
function isTitle(lines: readonly Line[], text: string, index: number): boolean {
  if (!RULE.test(text) && !isTitleText(text)) return false;
  let [above, at] = [text, index];
  for (let count = 0; count <= MOST_TITLES; count++) {
    at = nextIndex(lines, at);
    const next = shortText(lines[at]);
    if (rowIn(next) !== undefined || ADAPTER.test(next) || IPV6_ROW.test(next) || KEPT.test(next))
      return true;
    if (above.endsWith(':') && NOTHING.test(next)) return true;
    if (!RULE.test(next) && !isTitleText(next)) return false;
    above = next;
  }
  return false;
}

function isTitleText(text: string): boolean {
  return text.length < 200 && WORDS.test(text.includes('IPv') ? text.replace(/IPv[46]/, 'IPv') : text);
}

/** A row of the table in force. It leads to a network as its mask cuts it: people list addresses and masks, too. */
function rowIn(text: string): Omit<Route, 'line'> | undefined {
  const [, to, mask, gateway = '', adapter = '', metric = ''] = ROW.exec(text) ?? [];
  if (to === undefined || mask === undefined) return undefined;
  const destination = to === EVERYBODY ? destinationOf(`0.0.0.0/${mask}`) : destinationOf(`${to}/${mask}`);
  if (destination === undefined || hasHostPart(destination)) return undefined;
  // Windows XP repeats the own address where there is no gateway.
  const via = gateway === adapter ? undefined : address4(gateway);
  return { ...destination, ...(via !== undefined && { via }), adapter, metric: Number(metric) };
}

/** 255.255.255.255 is no address of anybody, and no mask here. */
function isToEverybody({ to, mask }: Omit<Route, 'line'>): boolean {
  return to.bits === 0 && mask.prefix === 32;
}

function hasHostPart({ to, mask }: Destination): boolean {
  return to.bits % 2 ** (32 - mask.prefix) !== 0;
}
