import { IPv6 } from 'ip-num';
import type { Sentence } from '../messages/say.js';
import { type Address, parseAddress, showAddress } from './address.js';
import { withoutFrills } from './octets.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';

/** Eight numbers of 16 bits, each 0 to 65535, the leftmost first. */
export type Groups = readonly [number, number, number, number, number, number, number, number];

/** An IPv6 address. A zone, such as the `%eth0` of a link-local address, is not part of it. */
export interface Address6 {
  readonly kind: 'ipv6';
  readonly groups: Groups;
}

const ZONE = /%[^ %/]{1,40}$/;
const GROUPS_AND_COLONS = /^[0-9a-f:.]*:[0-9a-f:.]*$/i;
const HARDWARE_ADDRESS = /^(?:[0-9a-f]{2}[:-]){5}[0-9a-f]{2}$/i;

/**
 * The IPv6 address a person typed or pasted (RFC 4291, section 2.2), also in square brackets and with
 * its last two groups as an IPv4 address. A zone after a percent sign is dropped (RFC 4007, section 11).
 * Refuses a prefix length, an IPv4 and a hardware address, with what to write instead.
 */
export function parseAddress6(text: string): Result<Address6> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const bare = withoutFrills(tidied.value)
    .replace(/^\[(.*)\]$/, '$1')
    .replace(ZONE, '');
  const said = { text: quoted(bare) };
  if (bare === '') return problem({ id: 'typed.empty' });
  if (parseAddress(bare).ok) return problem({ id: 'typed.address6-is-ipv4', with: said });
  if (HARDWARE_ADDRESS.test(bare)) return problem({ id: 'typed.address6-is-mac', with: said });
  const [, address = '', length] = /^(.*?) ?\/ ?(\d+)$/.exec(bare) ?? [];
  if (length !== undefined && groupsOf(address)) return problem(withLength(said.text, address));
  const groups = groupsOf(bare);
  return groups ? ok({ kind: 'ipv6', groups }) : problem({ id: 'typed.address6-wrong', with: said });
}

/**
 * The address as RFC 5952, section 4, writes it: small letters, no leading noughts, `::` for the longest
 * run of two or more empty groups, the first of equals. Where the last two groups are known to be an
 * IPv4 address they are written as one (RFC 5952, section 5; RFC 6052, section 2.4).
 */
export function showAddress6(address: Address6): string {
  const ipv4 = hasIpv4Tail(address) ? showAddress(lastAsIpv4(address)) : undefined;
  const pieces = address.groups.map((group) => group.toString(16));
  const shown = ipv4 === undefined ? pieces : [...pieces.slice(0, 6), ipv4];
  const run = longestRun(shown);
  if (run === undefined) return shown.join(':');
  return `${shown.slice(0, run.from).join(':')}::${shown.slice(run.from + run.length).join(':')}`;
}

/** The whole address as one number, 0 to 2^128 - 1. */
export function address6Value(address: Address6): bigint {
  return address.groups.reduce((sum, group) => sum * 65536n + BigInt(group), 0n);
}

/** The last 32 bits read as an IPv4 address. */
export function lastAsIpv4({ groups }: Address6): Address {
  return { kind: 'ipv4', bits: groups[6] * 65536 + groups[7] };
}

/** Under ::ffff:0:0/96 (RFC 4291, section 2.5.5.2) and 64:ff9b::/96 (RFC 6052, section 2.1). */
function hasIpv4Tail({ groups }: Address6): boolean {
  const start = groups.slice(0, 6).join();
  return start === '0,0,0,0,0,65535' || start === `${0x64},${0xff9b},0,0,0,0`;
}

function longestRun(
  pieces: readonly string[],
): { readonly from: number; readonly length: number } | undefined {
  let best: { readonly from: number; readonly length: number } | undefined;
  for (let from = 0; from < pieces.length; from++) {
    let length = 0;
    while (pieces[from + length] === '0') length++;
    if (length >= 2 && length > (best?.length ?? 0)) best = { from, length };
  }
  return best;
}

function groupsOf(text: string): Groups | undefined {
  if (!GROUPS_AND_COLONS.test(text)) return undefined;
  try {
    const [a, b, c, d, e, f, g, h] = new IPv6(text).getHexadecatet().map((group) => group.getValue());
    if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
    if (e === undefined || f === undefined || g === undefined || h === undefined) return undefined;
    return [a, b, c, d, e, f, g, h];
  } catch {
    // ip-num says only that it is none; what to write instead is ours to say.
    return undefined;
  }
}

function withLength(text: string, address: string): Sentence {
  return { id: 'typed.address6-with-length', with: { text, address: quoted(address) } };
}
