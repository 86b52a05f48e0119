import type { Address } from '../../values/address.js';
import { troubleKind, UNKNOWN_NAME } from './ping-words.js';
import { address4 } from './words.js';

/** `PING camera.example (172.23.40.57) 56(84) bytes of data.` and, for IPv6, no blank before the bracket. */
const HEAD = /^PING ([^\s(]{1,255}) ?\(([^\s()]{1,64})/i;
/** `64 bytes from 172.23.40.57: icmp_seq=1 ttl=64 time=0.5 ms`, whatever the words between. */
const REPLY = /^\d{1,5} .{1,300}?[ _]seq[= ](\d{1,9}) .{0,60}?ttl=\d/i;
/** `From 172.23.40.1 icmp_seq=1 Destination Host Unreachable`, and `From` in any language. */
const REFUSED = /^[^\d\s-]\S{0,20} .{1,300}?[ _]seq[= ](\d{1,9})[ ,:]+(\S.{0,200})$/;
/** `92 bytes from 172.23.40.1: Destination Host Unreachable`. */
const REFUSED_BSD = /^\d{1,5} bytes from (.{1,300}?): (\D.{0,200})$/;
/** `Request timeout for icmp_seq 0`. */
const SILENT = /^\D{1,80}icmp_seq[= ](\d{1,9})$/;
/** `ping: sendto: No route to host`. */
const COMPLAINT = /^(?:\S{0,200}\/)?(ping[46]?|connect|sendto|sendmsg): (\S.{0,300})$/;
const CALL = /^(?:connect|sendto|sendmsg): \S/;
/** The dump of the packet that the BSDs print below an error. */
const DUMP = /^(?:Vr HL TOS|\s?[0-9a-f]{1,2}\s+[0-9a-f]{1,2}\s+[0-9a-f]{1,2}\s+[0-9a-f]{4}\s)/;
const ANY_ADDRESS = /(?:^|[\s([])(\d{1,3}(?:\.\d{1,3}){3})(?=[\s)\],:]|$)/;

export type PingLine =
  | { readonly kind: 'head'; readonly target: string; readonly address: Address | undefined }
  | { readonly kind: 'reply'; readonly sequence: number; readonly from: Address | undefined }
  | { readonly kind: 'silent'; readonly sequence: number }
  | {
      readonly kind: 'refused';
      readonly sequence: number | undefined;
      readonly from: Address | undefined;
      readonly text: string;
    }
  | { readonly kind: 'complaint'; readonly text: string; readonly name: string | undefined }
  | { readonly kind: 'noise' };

/** What a line of a ping is, apart from its closing count. */
export function pingLine(text: string): PingLine | undefined {
  const head = HEAD.exec(text);
  if (head !== null) return { kind: 'head', target: head[1] ?? '', address: address4(head[2]) };
  const hasSequence = /seq/i.test(text);
  const reply = hasSequence ? REPLY.exec(text) : null;
  if (reply !== null) return { kind: 'reply', sequence: Number(reply[1]), from: addressIn(text) };
  const complaint = complaintIn(text);
  if (complaint !== undefined) return { kind: 'complaint', text: complaint, name: nameIn(complaint) };
  const silent = hasSequence ? SILENT.exec(text) : null;
  if (silent !== null) return { kind: 'silent', sequence: Number(silent[1]) };
  const refused = hasSequence ? REFUSED.exec(text) : null;
  if (refused !== null) {
    return { kind: 'refused', sequence: Number(refused[1]), from: addressIn(text), text: refused[2] ?? '' };
  }
  const bsd = text.includes(' bytes from ') ? REFUSED_BSD.exec(text)?.[2] : undefined;
  if (bsd !== undefined && troubleKind(bsd) !== undefined) {
    return { kind: 'refused', sequence: undefined, from: addressIn(text), text: bsd };
  }
  return text === '^C' || DUMP.test(text) || /^WARNING: pinging broadcast/.test(text)
    ? { kind: 'noise' }
    : undefined;
}

function addressIn(text: string): Address | undefined {
  return address4(ANY_ADDRESS.exec(text)?.[1]);
}

/** A person can write `ping: fine`, too: what ping says is in the tables, or names the call that failed. */
function complaintIn(text: string): string | undefined {
  const [, who, said] = COMPLAINT.exec(text) ?? [];
  if (said === undefined || troubleKind(said) !== undefined) return said;
  return who?.startsWith('ping') && CALL.test(said) ? said : undefined;
}

/** `nosuch.example: Name or service not known`, or the word behind `cannot resolve`. */
function nameIn(complaint: string): string | undefined {
  if (troubleKind(complaint) !== 'no-such-name' && !/^[^\s:]+\.[^\s:]+: /.test(complaint)) return undefined;
  return UNKNOWN_NAME.exec(complaint)?.[1] ?? /^([^\s:]{1,255}): /.exec(complaint)?.[1];
}
