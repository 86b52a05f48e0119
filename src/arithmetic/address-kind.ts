import type { MessageId } from '../messages/say.js';
import { type Address, showAddress } from '../values/address.js';
import { boundsOfBlock } from './block-bounds.js';
import { type AddressKind, type SpecialPurposeRow, specialPurposeRow } from './special-purpose.js';
import type { Worked } from './worked.js';

const WORDS = {
  private: 'subnet.kind-private',
  'self-assigned': 'subnet.kind-self-assigned',
  shared: 'subnet.kind-shared',
  documentation: 'subnet.kind-documentation',
  loopback: 'subnet.kind-loopback',
  multicast: 'subnet.kind-multicast',
  reserved: 'subnet.kind-reserved',
  'this-network': 'subnet.kind-this-network',
  public: 'subnet.kind-public',
} as const satisfies Record<AddressKind, MessageId>;

/** Multicast has a registry of its own and no row in the special-purpose one (RFC 5771, section 3). */
const MULTICAST: SpecialPurposeRow = { block: '224.0.0.0/4', rfc: 'RFC 5771', kind: 'multicast' };
const MULTICAST_BOUNDS = boundsOfBlock(MULTICAST.block);

/** What an address is for, by the most specific block that holds it (IANA registry, RFC 6890). */
export function addressKind(address: Address): Worked<AddressKind> {
  const row = specialPurposeRow(address) ?? (isMulticast(address) ? MULTICAST : undefined);
  const said = { address: showAddress(address) };
  if (row === undefined) return { value: 'public', lines: [{ id: WORDS.public, with: said }] };
  const block = { id: 'subnet.in-block', with: { ...said, block: row.block, rfc: row.rfc } } as const;
  return { value: row.kind, lines: [block, { id: WORDS[row.kind], with: said }] };
}

function isMulticast(address: Address): boolean {
  return MULTICAST_BOUNDS.first <= address.bits && address.bits <= MULTICAST_BOUNDS.last;
}
