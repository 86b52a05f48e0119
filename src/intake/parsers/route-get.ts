import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Route } from '../seen.js';
import { destinationOf } from '../unix/route-words.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, maskOf } from '../unix/words.js';

const FIELD =
  /^\s{0,20}(route to|destination|mask|gateway|interface|if address|flags|priority|label|inet6?): (.{1,200})$/;
const COUNTS = /^\s{0,20}(?:recvpipe|use|sockaddrs)\b|^[\s\d-]{8,200}$/;

/** `route -n get default` of macOS and the BSDs. */
export const routeGet: Parser = {
  name: 'route-get',
  source: 'route(8) of macOS, FreeBSD and OpenBSD',
  claims: (lines, from) => firstWhere(lines, from, (text) => /^\s{0,20}route to: \S/.test(text), HAS.colon),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const fields = new Map<string, { readonly text: string; readonly line: number }>();
  const understood = walk(lines, from, (text, line, index) => {
    const [, name, value] = FIELD.exec(text) ?? [];
    if (name === undefined || value === undefined) return COUNTS.test(text) ? 'read' : 'end';
    if (name === 'route to' && index > from) return 'end';
    fields.set(name, { text: value, line });
    return 'read';
  });
  const to = fields.get('destination');
  const mask = fields.get('mask')?.text ?? (to?.text === 'default' ? '0.0.0.0' : '255.255.255.255');
  const length = mask === 'default' ? 0 : maskOf(mask)?.prefix;
  const address = to?.text === 'default' ? '0.0.0.0' : to?.text;
  const destination = destinationOf(`${address ?? ''}/${length ?? ''}`);
  if (to === undefined || destination === undefined) return { seen: {}, lines: understood };
  const gateway = fields.get('gateway');
  const via = address4(gateway?.text);
  const adapter = fields.get('interface')?.text;
  const route: Route = {
    ...destination,
    ...(via !== undefined && { via }),
    ...(adapter !== undefined && { adapter }),
    line: via === undefined ? to.line : (gateway?.line ?? to.line),
  };
  return { seen: { routes: [route] }, lines: understood };
}
