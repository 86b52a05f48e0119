import type { Sentence } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import { type Address6, lastAsIpv4, showAddress6 } from '../values/address6.js';
import { type Address6Kind, specialPurpose6Row } from './special-purpose6.js';
import type { Worked } from './worked.js';

/** What an IPv6 address is for, and the IPv4 address inside it, where there is one. */
export interface Worked6 extends Worked<Address6Kind> {
  readonly embedded?: Address;
}

/**
 * What an IPv6 address is for, by the most specific block that holds it (IANA registry, RFC 6890; RFC
 * 4291). The IPv4 address inside is given for ::ffff:0:0/96 and 64:ff9b::/96 (RFC 6052, section 2.2).
 */
export function address6Kind(address: Address6): Worked6 {
  const row = specialPurpose6Row(address);
  const value = row?.kind ?? 'unallocated';
  const embedded = value === 'nat64' || value === 'ipv4-mapped' ? lastAsIpv4(address) : undefined;
  const said = { address: showAddress6(address), ...(embedded && { embedded: showAddress(embedded) }) };
  const verdict: Sentence = { id: `address6.${value}`, with: said };
  if (row === undefined) return { value, lines: [verdict] };
  const block: Sentence = { id: 'subnet.in-block', with: { ...said, block: row.block, rfc: row.rfc } };
  return { value, lines: [block, verdict], ...(embedded && { embedded }) };
}
