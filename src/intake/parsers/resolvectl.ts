import type { Address } from '../../values/address.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { At } from '../seen.js';
import { type AdapterDraft, addDns, draftOf } from '../unix/adapter-draft.js';
import { kindOfName } from '../unix/adapter-kind.js';
import { firstWhere, type Step, shortText, walk } from '../unix/walk.js';
import { address4, address6, wordsOf } from '../unix/words.js';

const LINK = /^Link \d{1,6} \(([^\s()]{1,40})\)(?:$|: ?(.{0,400})$)/;
const GLOBAL = /^Global(?:$|: ?(.{0,400})$)/;
const FIELD =
  /^\s{0,30}([A-Z][A-Za-z./]{1,20}(?: [A-Za-z./]{1,20}){0,3}|resolv\.conf mode|mDNS setting|LLMNR setting): ?(.{0,900})$/;
/** The one in use stands in the list, too. */
const SERVERS = 'DNS Servers';

/** `resolvectl status` and `resolvectl dns`: the servers of the whole computer, and those of each adapter. */
export const resolvectl: Parser = {
  name: 'resolvectl',
  source: 'resolvectl(1) of systemd',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => {
      if (LINK.test(text)) return true;
      return GLOBAL.test(text) && (text !== 'Global' || FIELD.test(shortText(lines[index + 1])));
    }),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const dns: At<Address>[] = [];
  const adapters: AdapterDraft[] = [];
  let adapter: AdapterDraft | undefined;
  let label = '';
  const addAll = (text: string, line: number): void => {
    for (const word of wordsOf(text)) {
      const server = serverOf(word);
      const ipv4 = address4(server);
      if (adapter !== undefined) addDns(adapter, server, line);
      else if (ipv4 !== undefined) dns.push({ value: ipv4, line });
    }
  };
  const understood = walk(lines, from, (text, line): Step => {
    const [, name, near] = LINK.exec(text) ?? [];
    const global = GLOBAL.exec(text);
    if (name !== undefined || global !== null) {
      adapter = name === undefined ? undefined : draftOf(name, kindOfName(name));
      if (adapter !== undefined) adapters.push(adapter);
      label = '';
      addAll(near ?? global?.[1] ?? '', line);
      return 'read';
    }
    const [, field, value] = FIELD.exec(text) ?? [];
    const more = field === undefined ? text : (value ?? '');
    if (field === undefined && !/^\s{4}/.test(text) && !isServer(wordsOf(text)[0] ?? '')) return 'end';
    label = field ?? label;
    if (label === SERVERS) addAll(more, line);
    return 'read';
  });
  return { seen: { dns, adapters }, lines: understood };
}

/** More servers stand below the first, and whoever pasted them may have lost the blanks before them. */
function isServer(word: string): boolean {
  const server = serverOf(word);
  return address4(server) !== undefined || address6(server) !== undefined;
}

/** A server can have a port, an adapter and the name of its certificate behind it. */
function serverOf(word: string): string {
  const bare = word.replace(/#\S{0,255}$/, '').replace(/^\[([^\]]{1,64})\](?::\d{1,5})?$/, '$1');
  return address6(bare) === undefined ? bare.replace(/[:%][\w.-]{1,40}$/, '') : bare;
}
