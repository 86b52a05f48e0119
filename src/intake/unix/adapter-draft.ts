import type { Adapter, AdapterAddress, AdapterKind } from '../seen.js';
import { address4, address6, maskOf } from './words.js';

/** An adapter while its lines are read. */
export type AdapterDraft = {
  -readonly [K in keyof Adapter]: Adapter[K] extends readonly (infer T)[] ? T[] : Adapter[K];
};

/** An adapter of which only the name is known. */
export function draftOf(name: string, kind: AdapterKind): AdapterDraft {
  return {
    name,
    owner: 'computer',
    kind,
    addresses: [],
    addresses6: [],
    gateways: [],
    gateways6: [],
    dns: [],
    dns6: [],
  };
}

/** Adds an IPv4 or IPv6 address; says whether the word was one. */
export function addAddress(
  draft: AdapterDraft,
  word: string,
  mask: string | undefined,
  line: number,
): boolean {
  const ipv4 = address4(word);
  if (ipv4 !== undefined) {
    draft.addresses.push(withMask(ipv4, mask, line));
    return true;
  }
  const ipv6 = address6(word);
  if (ipv6 === undefined) return false;
  draft.addresses6.push({ value: ipv6, line });
  return true;
}

/** Adds a DNS server; says whether the word was an address. */
export function addDns(draft: AdapterDraft, word: string, line: number): boolean {
  const ipv4 = address4(word);
  const ipv6 = ipv4 === undefined ? address6(word) : undefined;
  if (ipv4 !== undefined) draft.dns.push({ value: ipv4, line });
  if (ipv6 !== undefined) draft.dns6.push({ value: ipv6, line });
  return ipv4 !== undefined || ipv6 !== undefined;
}

function withMask(
  address: AdapterAddress['address'],
  mask: string | undefined,
  line: number,
): AdapterAddress {
  const parsed = maskOf(mask);
  return parsed === undefined ? { address, line } : { address, mask: parsed, line };
}
