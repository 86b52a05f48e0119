import { type Address, isBlank, parseAddress } from '../values/address.js';
import type { Result } from '../values/result.js';

/** An address as somebody typed it; nothing for an empty line or 0.0.0.0. */
export function givenAddress(text: string): Result<Address | undefined> {
  if (text.trim() === '') return { ok: true, value: undefined };
  const parsed = parseAddress(text);
  return parsed.ok && isBlank(parsed.value) ? { ok: true, value: undefined } : parsed;
}
