import { lastFour, type Span } from './span.js';

const RUN = /(?<![0-9A-Fa-f:])[0-9A-Fa-f:]*:[0-9A-Fa-f:]*/g;
const GROUPS_OF_MAC: ReadonlySet<number> = new Set([6, 8]);

/** What is written with colons: MAC addresses, and IPv6 addresses that hold anywhere or give a MAC away. */
export function colonAddresses(text: string): readonly Span[] {
  return [...text.matchAll(RUN)].flatMap(({ 0: run, index }) => {
    const start = index + wordBefore(text, run, index);
    const isHead = /^\.[0-9x]/.test(text.slice(index + run.length, index + run.length + 2));
    const whole = text.slice(start, index + run.length);
    const address = (isHead ? whole.replace(/[^:]*$/, '') : whole).replace(/(?<!:):$/, '');
    const span = { start, end: start + address.length };
    const groups = address.split(':');
    if (GROUPS_OF_MAC.has(groups.length) && groups.every((group) => /^[0-9A-F]{1,2}$/i.test(group))) {
      return [{ ...span, shown: lastFour(address) }];
    }
    return isIpv6(address) ? [{ ...span, shown: maskIpv6(address) }] : [];
  });
}

/** How much of the run is the end of a word, or a colon after one, as in `mac:00:1b:...`. */
function wordBefore(text: string, run: string, at: number): number {
  const isWord = /[A-Za-z0-9]/.test(text.charAt(at - 1));
  return /^:(?!:)/.exec(run)?.[0].length ?? (isWord ? (/^[^:]+:(?!:)/.exec(run)?.[0].length ?? 0) : 0);
}

/** RFC 4291, section 2.2: eight groups, or fewer with one `::`. */
function isIpv6(text: string): boolean {
  const groups = text.split('::').map((side) => (side === '' ? [] : side.split(':')));
  const count = groups.flat().length;
  if (!groups.flat().every((group) => /^[0-9A-F]{1,4}$/i.test(group))) return false;
  return groups.length === 1 ? count === 8 : groups.length === 2 && count <= 7;
}

/**
 * Link-local (RFC 4291, section 2.5.6) and unique local addresses (RFC 4193) stay legible but for a MAC in
 * them (RFC 4291, appendix A); so do `::`, `::1`, multicast, and
 * what stands before an IPv4 address. All others keep their first group.
 */
function maskIpv6(text: string): string {
  if (/^(?:fe[89ab][0-9a-f]|f[cd][0-9a-f]{2}):/i.test(text)) {
    return text.replace(/(?:[0-9a-f]{1,4}:)[0-9a-f]{0,2}ff:fe[0-9a-f]{0,2}:(?=[0-9a-f]{1,4}$)/i, 'x:x:x:');
  }
  if (/^(?:::[0-9a-f]{0,4}$|64:ff9b::$|ff[0-9a-f]{2}:)/i.test(text)) return text;
  return text.startsWith('::') ? '::x' : `${text.slice(0, text.indexOf(':'))}:x::x`;
}
