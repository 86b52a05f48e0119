import { type Address, parseAddress } from '../../values/address.js';
import { ok, type Result } from '../../values/result.js';

/** Addresses with commas, semicolons or spaces between them. */
export function parseAddresses(text: string): Result<readonly Address[]> {
  const addresses: Address[] = [];
  for (const piece of text.split(/[\s,;]+/).filter((one) => one !== '')) {
    const parsed = parseAddress(piece);
    if (!parsed.ok) return parsed;
    addresses.push(parsed.value);
  }
  return ok(addresses);
}
