import type { Address } from '../../values/address.js';
import type { PingTrouble } from '../seen.js';
import { address4 } from '../unix/words.js';
import { nameNotFound, windowsTrouble } from './ping-words.js';

const BYTES = /byte|octet|bájt|bajt|bayt|байт|字节|位元組|バイト|tavu|bitgrup/i;
/** `cam.example [172.23.40.57]`; the name may be an address of the other kind. */
const NAMED = /(\S{1,255}) \[([0-9a-f.:]{2,45}(?:%\S{1,20})?)\]/i;
const ADDRESS4 = /(?<![\d.])\d{1,3}(?:\.\d{1,3}){3}(?![\d.])/;
const ADDRESS6 = /(?<![0-9a-f:.])[0-9a-f]{0,4}(?::[0-9a-f]{0,4}){2,8}(?:%\d{1,9})?(?![0-9a-f])/i;
const SIZE = /(?<![\d.:%])\d{1,5}(?![\d.:])/;
/** From whom, a colon, and what: `Reply from 172.23.40.57: bytes=32 time<1ms TTL=64`. */
const SAID = /^(\D{0,60}(?:\d{1,3}(?:\.\d{1,3}){3}|[0-9a-f:]{2,45}(?:%\d{1,9})?)\D{0,40}?): ?(\S.{0,200})$/i;
const MEASURED = /TTL ?= ?\d|[=<] ?\d{1,9} ?[mм]/i;
/** The ping of other systems numbers its replies; a traceroute its hops. */
const OTHERS = /seq[=:]|^\s*\d{1,5} |^From /i;
const COUNTS =
  /[=:] {0,3}(\d{1,9})(?!\d)[^\d=:]{1,40}[=:] {0,3}(\d{1,9})(?!\d)[^\d=:]{1,40}[=:] {0,3}(\d{1,9})(?!\d)/;
/** In capitals, as only Windows writes it, whatever the language behind it. */
const COMPLAINT = /^\s{0,8}PING ?: ?\S/;

export type WindowsPingLine =
  | { readonly kind: 'head' | 'count'; readonly target: string; readonly address: Address | undefined }
  | { readonly kind: 'reply'; readonly from: Address | undefined; readonly source: string }
  | {
      readonly kind: 'refused';
      readonly from: Address | undefined;
      readonly trouble: PingTrouble['kind'] | undefined;
    }
  | { readonly kind: 'trouble'; readonly trouble: PingTrouble['kind'] }
  | { readonly kind: 'no-such-name'; readonly target: string };

/** What a line of a ping is, apart from its closing numbers. */
export function windowsPingLine(text: string): WindowsPingLine | undefined {
  if (text.length > 400) return undefined;
  const name = nameNotFound(text);
  if (name !== undefined) return { kind: 'no-such-name', target: name };
  if (text.endsWith(':')) return headOf(text);
  if (!OTHERS.test(text)) {
    const said = saidOf(text);
    if (said !== undefined) return said;
  }
  if (COMPLAINT.test(text)) return { kind: 'trouble', trouble: windowsTrouble(text) ?? 'failed' };
  if (SIZE.test(text)) return undefined;
  const trouble = windowsTrouble(text);
  if (trouble === undefined || trouble === 'ttl-expired') return undefined;
  return { kind: 'trouble', trouble };
}

/** Three numbers, each behind a sign: sent, received and lost, or the shortest, longest and average time. */
export function threeNumbers(text: string): readonly [number, number, number] | undefined {
  const [, one, two, three] = COUNTS.exec(text) ?? [];
  return one === undefined ? undefined : [Number(one), Number(two), Number(three)];
}

/** The first line has a size in bytes, the line above the closing numbers has the word `ping` and none. */
function headOf(text: string): WindowsPingLine | undefined {
  const target = targetIn(text);
  if (target === undefined) return undefined;
  const rest = text.replace(target.said, ' ');
  if (SIZE.test(rest) && BYTES.test(rest))
    return { kind: 'head', target: target.name, address: target.address };
  if (SIZE.test(rest) || !/ping/i.test(rest)) return undefined;
  return { kind: 'count', target: target.name, address: target.address };
}

function saidOf(text: string): WindowsPingLine | undefined {
  if (!text.includes(':')) return undefined;
  const [, who = '', what = ''] = SAID.exec(text) ?? [];
  const source = ADDRESS4.exec(who)?.[0] ?? ADDRESS6.exec(who)?.[0];
  if (source === undefined) return undefined;
  const from = address4(source);
  if (MEASURED.test(what)) return { kind: 'reply', from, source };
  if (/\d/.test(what) || from === undefined) return undefined;
  return { kind: 'refused', from, trouble: windowsTrouble(what) };
}

interface Target {
  readonly name: string;
  readonly address: Address | undefined;
  /** As it stands in the line. */
  readonly said: string;
}

function targetIn(text: string): Target | undefined {
  const named = text.includes(' [') ? NAMED.exec(text) : null;
  if (named !== null) {
    return { name: named[1] ?? '', address: address4(named[2]), said: named[0] };
  }
  // The colon that ends the line is none of the address.
  const word = ADDRESS4.exec(text)?.[0] ?? ADDRESS6.exec(text.slice(0, -1))?.[0];
  return word === undefined ? undefined : { name: word, address: address4(word), said: word };
}
