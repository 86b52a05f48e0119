import type { Address } from '../../values/address.js';
import type { Line } from '../parser.js';
import type { Lookup } from '../seen.js';
import { shortText } from './walk.js';
import { address4 } from './words.js';

/** `172.23.40.1#53(172.23.40.1) (UDP)`, `172.23.40.1#53: timed out`, `172.23.40.1:53`. */
const SERVER = /(?:^|\s)(\d{1,3}(?:\.\d{1,3}){3})(?:#\d{1,5}|:\d{1,5}(?!\d))/;
const SILENT =
  /(?:timed out|no servers could be reached|connection refused|host unreachable|network unreachable)/i;

/** The server that a line of a resolver's tool names with its port. */
export function serverIn(text: string): Address | undefined {
  return address4(SERVER.exec(text)?.[1]);
}

/** A line that says that no server answered: two semicolons and the reason. */
export function isSilence(text: string): boolean {
  return (text.startsWith(';; ') || text.startsWith('nslookup: ')) && SILENT.test(text);
}

/** How `dig` begins. */
export const BANNER = /^; <<>> DiG \S/;
const MOST_SILENT = 8;

/** Whether `dig` begins below: it says that nobody answered before it says what it is. */
export function isBeforeBanner(lines: readonly Line[], index: number): boolean {
  for (let at = index + 1; at <= index + MOST_SILENT; at++) {
    const text = shortText(lines[at]);
    if (BANNER.test(text)) return true;
    if (text !== '' && !isSilence(text)) return false;
  }
  return false;
}

/** What the name of a DNS answer code (RFC 1035, section 4.1.1) means for the one who asked. */
export function outcomeOf(code: string): Lookup['outcome'] {
  if (code === 'NOERROR') return 'answered';
  if (code === 'NXDOMAIN') return 'no-such-name';
  return code === 'REFUSED' ? 'refused' : 'failed';
}

/** A name as a person writes it, without the dot of the root behind it. */
export function plainName(name: string): string {
  return name.length > 1 && name.endsWith('.') ? name.slice(0, -1) : name;
}

/** A lookup while its lines are read. */
export interface LookupDraft {
  name: string;
  server: Address | undefined;
  addresses: Address[];
  outcome: Lookup['outcome'] | undefined;
  readonly line: number;
}

export function lookupDraft(line: number): LookupDraft {
  return { name: '', server: undefined, addresses: [], outcome: undefined, line };
}

/** The lookup; a text that broke off before its end tells nothing of the outcome but what it gave. */
export function lookupOf(draft: LookupDraft): Lookup {
  const { name, server, addresses, line } = draft;
  const outcome = draft.outcome ?? (addresses.length > 0 ? 'answered' : 'failed');
  return { name, ...(server !== undefined && { server }), addresses, outcome, line };
}
