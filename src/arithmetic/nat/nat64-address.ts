import type { Address } from '../../values/address.js';
import { beyond } from './wan-standing.js';

/**
 * The IPv6 address at which an IPv6-only network reaches an IPv4 address under the well-known prefix
 * 64:ff9b::/96 (RFC 6052, section 2.4), written as RFC 5952 wants it. `undefined` for an address that
 * is not public: that prefix must not stand for one (RFC 6052, section 3.1).
 */
export function nat64Address(address: Address): string | undefined {
  if (beyond(address) !== 'internet') return undefined;
  const high = Math.floor(address.bits / 0x10000);
  const low = address.bits % 0x10000;
  return `64:ff9b::${high.toString(16)}:${low.toString(16)}`;
}
