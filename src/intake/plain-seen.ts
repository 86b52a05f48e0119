import { type Address, showAddress } from '../values/address.js';
import { type Address6, showAddress6 } from '../values/address6.js';
import { type Mask, showMask } from '../values/mask.js';
import type { Seen } from './seen.js';

/** What was seen, with addresses and masks as they are written. */
export function plain(seen: Seen): unknown {
  return written(seen);
}

function written(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(written);
  if (typeof value !== 'object' || value === null) return value;
  if (isOf<Address>(value, 'ipv4')) return showAddress(value);
  if (isOf<Mask>(value, 'mask')) return showMask(value);
  if (isOf<Address6>(value, 'ipv6')) return showAddress6(value);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, written(each)]));
}

function isOf<T extends { readonly kind: string }>(value: object, kind: T['kind']): value is T {
  return 'kind' in value && value.kind === kind;
}
