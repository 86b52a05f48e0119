import { IPv4, IPv4CidrRange, IPv4Prefix } from 'ip-num';

/** The lowest and the highest address of a block, as unsigned 32-bit numbers. */
export interface Bounds {
  readonly first: number;
  readonly last: number;
}

/** The bounds of the block of `prefix` bits (0 to 32) that holds `bits` (RFC 4632, section 3.1). */
export function blockBounds(bits: number, prefix: number): Bounds {
  return boundsOf(new IPv4CidrRange(IPv4.fromNumber(BigInt(bits)), IPv4Prefix.fromNumber(BigInt(prefix))));
}

/** The bounds of a block in CIDR notation, such as `10.0.0.0/8`. Throws when it is not in that notation. */
export function boundsOfBlock(block: string): Bounds {
  return boundsOf(IPv4CidrRange.fromCidr(block));
}

function boundsOf(range: IPv4CidrRange): Bounds {
  return { first: Number(range.getFirst().getValue()), last: Number(range.getLast().getValue()) };
}
