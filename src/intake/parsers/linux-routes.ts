import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Route } from '../seen.js';
import { destinationOf } from '../unix/route-words.js';
import { firstWhere, shortText, walk } from '../unix/walk.js';
import { address4, says, wordsOf } from '../unix/words.js';

const COLUMNS = 8;
const FLAGS = /^!?[UGHRDMACI!]{1,8}$/;
/** The fifth column is the metric where the head says so; `netstat -r` has the segment size there. */
const METRIC = ['metri', 'métri'];
const TITLE = /\bIP\b/;

/** `route`, `route -n` and `netstat -rn` of Linux. Rows that lead nowhere (`!`) are understood and not given. */
export const linuxRoutes: Parser = {
  name: 'linux-routes',
  source: 'route(8) and netstat(8) of net-tools, and busybox; the message files of net-tools',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => begins(lines, text, index), HAS.blank, HAS.signs, HAS.foreign),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const routes: Route[] = [];
  let hasMetric = false;
  const understood = walk(lines, from, (text, line, index) => {
    if (isRow(text)) {
      const route = routeOf(text, line, hasMetric);
      if (route !== undefined) routes.push(route);
      return 'read';
    }
    if (routes.length > 0 || !begins(lines, text, index)) return 'end';
    hasMetric = says(text, METRIC);
    return 'read';
  });
  return { seen: { routes }, lines: understood };
}

/** A row, the head above it, or the title above that. */
function begins(lines: readonly Line[], text: string, index: number): boolean {
  if (isRow(text)) return true;
  if (!/^\p{L}[^\d:]{3,120}$/u.test(text)) return false;
  if (isRow(shortText(lines[index + 1]))) return wordsOf(text).length >= COLUMNS - 1;
  return TITLE.test(text) && isRow(shortText(lines[index + 2]));
}

function isRow(text: string): boolean {
  if (!/^\s{0,20}(?:\d|default\s)/.test(text)) return false;
  const words = wordsOf(text);
  const [to = '', , mask = '', flags = ''] = words;
  if (words.length !== COLUMNS || !FLAGS.test(flags)) return false;
  return destinationOf(`${numberOf(to)}/${mask}`) !== undefined;
}

function routeOf(text: string, line: number, hasMetric: boolean): Route | undefined {
  const [to = '', gateway = '', mask = '', flags = '', metric = '', , , adapter = ''] = wordsOf(text);
  const destination = destinationOf(`${numberOf(to)}/${mask}`);
  if (destination === undefined || flags.includes('!')) return undefined;
  const via = address4(gateway);
  return {
    ...destination,
    ...(via !== undefined && via.bits !== 0 && { via }),
    adapter,
    ...(hasMetric && /^\d{1,10}$/.test(metric) && { metric: Number(metric) }),
    line,
  };
}

function numberOf(to: string): string {
  return to === 'default' ? '0.0.0.0' : to;
}
