import type { Line, Parser, Taken } from '../parser.js';
import type { Adapter, Neighbour, Route } from '../seen.js';
import { jsonAdapter, jsonNeighbour, jsonRoutes } from '../unix/ip-json-parts.js';
import { readJson } from '../unix/json.js';

const START = /^\s{0,20}\[\s{0,20}(?:\{|$)/;
const KEY = /"(?:ifindex|ifname|dst)"\s?:/;

/** `ip -j addr`, `ip -j route` and `ip -j neigh`, on one line or, with `-p`, on many. */
export const ipJson: Parser = {
  name: 'ip-json',
  source: 'ip(8) of iproute2, option -json',
  claims,
  take,
};

function claims(lines: readonly Line[], from: number): number {
  for (let index = Math.max(0, from); index < lines.length; index++) {
    if (!START.test(lines[index]?.text ?? '')) continue;
    for (let at = index; at < index + 5; at++) {
      if (KEY.test(lines[at]?.text.slice(0, 400) ?? '')) return index;
    }
  }
  return -1;
}

function take(lines: readonly Line[], from: number): Taken {
  const read = readJson(lines, from);
  if (read?.value.kind !== 'list') return { seen: {}, lines: new Set() };
  const adapters: Adapter[] = [];
  const neighbours: Neighbour[] = [];
  const routes: Route[] = [];
  for (const item of read.value.items) {
    const adapter = jsonAdapter(item);
    const neighbour = jsonNeighbour(item);
    if (adapter !== undefined) adapters.push(adapter);
    if (neighbour !== undefined) neighbours.push(neighbour);
    routes.push(...jsonRoutes(item));
  }
  const seen = {
    ...(adapters.length > 0 && { adapters }),
    ...(routes.length > 0 && { routes }),
    ...(neighbours.length > 0 && { neighbours }),
  };
  return { seen, lines: read.lines };
}
