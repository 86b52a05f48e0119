import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Neighbour } from '../seen.js';
import { neighbourState } from '../unix/neighbour-state.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, address6, after, macOf, wordsOf } from '../unix/words.js';

/** `ip neigh`. The neighbours of IPv6 are understood and not given. */
export const ipNeighbour: Parser = {
  name: 'ip-neighbour',
  source: 'ip-neighbour(8) of iproute2',
  claims: (lines, from) => firstWhere(lines, from, (text) => neighbourOf(text, 0) !== undefined, HAS.capital),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const neighbours: Neighbour[] = [];
  const understood = walk(lines, from, (text, line) => {
    const found = neighbourOf(text, line);
    if (found === undefined) return 'end';
    if (found !== 'ipv6') neighbours.push(found);
    return 'read';
  });
  return { seen: { neighbours }, lines: understood };
}

/** The neighbour that a line of `ip neigh` tells of; it has a state at its end, which no route has. */
export function neighbourOf(text: string, line: number): Neighbour | 'ipv6' | undefined {
  if (!text.includes('dev')) return undefined;
  const words = wordsOf(text);
  const state = neighbourState(words.at(-1));
  const adapter = after(words, 'dev');
  if (state === undefined || adapter === undefined || words.indexOf('dev') !== 1) return undefined;
  const address = address4(words[0]);
  if (address === undefined) return address6(words[0]) === undefined ? undefined : 'ipv6';
  const mac = macOf(after(words, 'lladdr'));
  return { address, ...(mac !== undefined && { mac }), state, adapter, line };
}
