import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { At } from '../seen.js';
import { type AdapterDraft, addDns, draftOf } from '../unix/adapter-draft.js';
import { kindOfName } from '../unix/adapter-kind.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4 } from '../unix/words.js';

const TITLE = /^DNS configuration(?: \(for (?:scoped|service-specific) queries\))?$/;
const RESOLVER = /^resolver #\d{1,4}$/;
const FIELD =
  /^\s{0,20}(nameserver|search domain|domain|if_index|flags|reach|order|timeout|options|port|service_identifier)(?:\[\d{1,3}\])? {0,12}: (.{1,300})$/;
const ADAPTER = /^\d{1,6} \(([^\s()]{1,40})\)$/;

interface Resolver {
  readonly servers: At<string>[];
  isForOneDomain: boolean;
  adapter: string | undefined;
}

/**
 * `scutil --dns`: the resolvers for everything give the servers of the whole computer, the scoped ones those of an
 * adapter. A resolver for one domain gives none.
 */
export const scutilDns: Parser = {
  name: 'scutil-dns',
  source: 'scutil(8) of macOS; the form of its list from memory',
  claims: (lines, from) =>
    firstWhere(lines, from, (text) => TITLE.test(text) || RESOLVER.test(text), HAS.blank),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const plain: Resolver[] = [];
  const scoped: Resolver[] = [];
  let isScoped = false;
  let resolver: Resolver | undefined;
  const understood = walk(lines, from, (text, line) => {
    if (TITLE.test(text)) {
      isScoped = text.includes('(');
      return 'read';
    }
    if (RESOLVER.test(text)) {
      resolver = { servers: [], isForOneDomain: false, adapter: undefined };
      (isScoped ? scoped : plain).push(resolver);
      return 'read';
    }
    const [, field, value = ''] = FIELD.exec(text) ?? [];
    if (field === undefined || resolver === undefined) return 'end';
    if (field === 'nameserver') resolver.servers.push({ value, line });
    if (field === 'domain') resolver.isForOneDomain = true;
    if (field === 'if_index') resolver.adapter = ADAPTER.exec(value)?.[1];
    return 'read';
  });
  return { seen: { dns: wholeOf(plain), adapters: adaptersOf(scoped) }, lines: understood };
}

function wholeOf(resolvers: readonly Resolver[]): readonly At<Address>[] {
  return resolvers
    .filter((resolver) => !resolver.isForOneDomain)
    .flatMap((resolver) => resolver.servers)
    .flatMap(({ value, line }) => {
      const address = address4(value);
      return address === undefined ? [] : [{ value: address, line }];
    });
}

function adaptersOf(resolvers: readonly Resolver[]): readonly AdapterDraft[] {
  const adapters = new Map<string, AdapterDraft>();
  for (const { adapter: name, servers, isForOneDomain } of resolvers) {
    if (name === undefined || isForOneDomain) continue;
    const adapter = adapters.get(name) ?? draftOf(name, kindOfName(name));
    adapters.set(name, adapter);
    for (const { value, line } of servers) addDns(adapter, value, line);
  }
  return [...adapters.values()];
}
