import type { MessageId, Sentence } from '../messages/say.js';
import type { AddressWithMask } from '../values/address.js';
import { showBlock } from './show-block.js';
import { sameSubnet } from './subnet.js';
import { subnetLines } from './subnet-lines.js';
import type { Worked } from './worked.js';

/** How two ranges lie: ranges cut by masks are never half inside each other. */
export type Overlap = 'same' | 'first-inside-second' | 'second-inside-first' | 'apart';

const WORDS = {
  same: 'overlap.same',
  'first-inside-second': 'overlap.inside',
  'second-inside-first': 'overlap.inside',
  apart: 'overlap.apart',
} as const satisfies Record<Overlap, MessageId>;

/**
 * Whether two networks, each given by one address in it and its mask, use the same addresses (RFC 4632,
 * section 3.1). Matters where something must choose between them: both ends of a VPN, or the two sides
 * of a second router (common practice, no source).
 */
export function overlap(first: AddressWithMask, second: AddressWithMask): Worked<Overlap> {
  const value = compare(first, second);
  const [inner, outer] = value === 'second-inside-first' ? [second, first] : [first, second];
  const said = { inner: showBlock(inner), outer: showBlock(outer) };
  const matters: Sentence = { id: value === 'apart' ? 'overlap.no-harm' : 'overlap.matters' };
  return {
    value,
    lines: [
      ...subnetLines(first.address, first.mask),
      ...subnetLines(second.address, second.mask),
      { id: WORDS[value], with: said },
      matters,
    ],
  };
}

function compare(first: AddressWithMask, second: AddressWithMask): Overlap {
  const wider = first.mask.prefix <= second.mask.prefix ? first : second;
  const narrower = wider === first ? second : first;
  if (!sameSubnet(wider.address, wider.mask, narrower.address)) return 'apart';
  if (first.mask.prefix === second.mask.prefix) return 'same';
  return narrower === first ? 'first-inside-second' : 'second-inside-first';
}
