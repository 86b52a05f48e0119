import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Parser } from '../parser.js';
import type { At } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, address6, wordsOf } from '../unix/words.js';

const OTHER = /^(?:search|domain|options|sortlist)\s{1,20}\S|^#/;

/** `/etc/resolv.conf`. Its IPv6 servers are understood and not given. */
export const resolvConf: Parser = {
  name: 'resolv-conf',
  source: 'resolv.conf(5)',
  claims: (lines, from) => firstWhere(lines, from, (text) => serverIn(text) !== undefined, HAS.blank),
  take: (lines, from) => {
    const dns: At<Address>[] = [];
    const understood = walk(lines, from, (text, line) => {
      const server = serverIn(text);
      if (server === undefined) return OTHER.test(text) ? 'read' : 'end';
      if (server !== 'ipv6') dns.push({ value: server, line });
      return 'read';
    });
    return { seen: { dns }, lines: understood };
  },
};

function serverIn(text: string): Address | 'ipv6' | undefined {
  if (!text.includes('nameserver')) return undefined;
  const [label, word] = wordsOf(text);
  if (label !== 'nameserver') return undefined;
  return address4(word) ?? (address6(word) === undefined ? undefined : 'ipv6');
}
