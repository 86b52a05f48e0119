import { IPv4Mask, IPv4Prefix } from 'ip-num';
import { maskFault } from './mask-fault.js';
import { fourNumbers, isContiguous, type Octets, withoutFrills } from './octets.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';

/** A subnet mask as the number of its leading ones, 0 to 32. */
export interface Mask {
  readonly kind: 'mask';
  readonly prefix: number;
}

/**
 * The mask a person typed: dotted, with a slash or without (`/255.255.255.0`), as `/24` or `24`, or
 * in hexadecimal as some systems print it (`0xffffff00`). Refuses ones after a nought (RFC 4632,
 * section 3.1) and an address, with what to write instead.
 */
export function parseMask(text: string): Result<Mask> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const bare = withoutFrills(tidied.value).replace(/^\/ ?/, '');
  if (bare === '') return problem({ id: 'typed.empty' });
  if (/^\d+$/.test(bare)) return fromPrefix(bare);
  const after = /^.+\/ ?(.+)$/.exec(bare)?.[1];
  if (after !== undefined && parseMask(after).ok) {
    return problem({ id: 'typed.mask-with-address', with: { text: quoted(bare), mask: quoted(after) } });
  }
  const hexadecimal = /^0x([0-9a-f]{8})$/i.exec(bare)?.[1];
  const octets = hexadecimal === undefined ? fourNumbers(bare, 'mask') : ok(fromHexadecimal(hexadecimal));
  if (!octets.ok) return octets;
  if (!isContiguous(octets.value)) return problem(maskFault(octets.value, quoted(bare)));
  return ok({ kind: 'mask', prefix: new IPv4Mask(octets.value.join('.')).prefix });
}

/** The mask in dotted form. */
export function showMask(mask: Mask): string {
  return IPv4Prefix.fromNumber(BigInt(mask.prefix)).toMask().toString();
}

function fromPrefix(digits: string): Result<Mask> {
  const prefix = Number(digits);
  if (prefix > 32) return problem({ id: 'typed.prefix-too-big', with: { number: quoted(digits) } });
  if (digits !== String(prefix)) {
    return problem({ id: 'typed.prefix-leading-zero', with: { number: quoted(digits), plain: prefix } });
  }
  return ok({ kind: 'mask', prefix });
}

function fromHexadecimal(digits: string): Octets {
  const at = (index: number): number => Number.parseInt(digits.slice(index, index + 2), 16);
  return [at(0), at(2), at(4), at(6)];
}
