import { isBlank } from '../../values/address.js';
import { type AdapterDraft, addDns, draftOf } from '../unix/adapter-draft.js';
import { address4, address6, macOf, maskOf, says } from '../unix/words.js';
import { kindOfWindowsAdapter } from './adapter-kind.js';
import type { Field } from './field.js';
import { DISCONNECTED, GATEWAY_LABELS, NO, YES } from './ipconfig-words.js';

/** What no name tells is a gateway where it is an address, and else the description or the like. */
type Meaning = 'address' | 'nameless' | 'dns' | 'other';

/** The names that no language translates tell most labels apart: only the gateway has none. */
const DNS = /DNS/i;
const DHCP = /DHCP/i;
const IGNORED = /WINS|NetBIOS|DUID|IAID/i;
const IP = /(?:^|[^a-z])IP(?:v[46])?(?:[^a-z]|$)/i;
const UNSPECIFIED = /^::(?:%\d{1,9})?$/;

/** An adapter while the fields below its heading are read. */
export class IpconfigAdapter {
  readonly #draft: AdapterDraft;
  readonly #heading: string;
  #description = '';
  #meaning: Meaning = 'other';
  #isNamed = true;
  #hasAnything = false;
  #awaitsMask = false;

  constructor(heading: string, name: string) {
    this.#heading = heading;
    this.#draft = draftOf(name, kindOfWindowsAdapter(heading, ''));
    this.#hasAnything = heading !== '';
  }

  /** Whether there is anything to tell: a heading, or a value below a lost one. */
  get hasAnything(): boolean {
    return this.#hasAnything;
  }

  get adapter(): AdapterDraft {
    return this.#draft;
  }

  add({ label, value }: Field, line: number): void {
    const word = firstWord(value);
    const awaitedMask = this.#awaitsMask;
    this.#awaitsMask = false;
    this.#meaning = meaningOf(label);
    this.#isNamed = says(label, GATEWAY_LABELS);
    if (DHCP.test(label)) this.#addDhcp(word, value, line);
    else if (IGNORED.test(label)) this.#meaning = 'other';
    else if (this.#meaning === 'nameless' && this.#addMask(word, awaitedMask)) this.#meaning = 'other';
    else if (!this.#addWord(word, line)) this.#addText(value, line);
  }

  /** A further value, or the rest of one, on a line of its own. Says whether it is an address. */
  goOn(value: string, line: number): boolean {
    if (this.#addWord(firstWord(value), line)) return true;
    this.#describe(value);
    return false;
  }

  #addMask(word: string, isAwaited: boolean): boolean {
    const mask = /^\d{1,3}(?:\.\d{1,3}){3}$/.test(word) ? maskOf(word) : undefined;
    if (mask === undefined || mask.prefix === 0 || !isAwaited) return mask !== undefined && !isAwaited;
    const address = this.#draft.addresses.pop();
    if (address !== undefined) this.#draft.addresses.push({ ...address, mask });
    return true;
  }

  #addDhcp(word: string, value: string, line: number): void {
    this.#meaning = 'other';
    const server = address4(word);
    if (server !== undefined && !isBlank(server)) {
      this.#draft.dhcpServer = { value: server, line };
      // Printed only where the address came from it.
      this.#draft.isByHand ??= { value: false, line };
    }
    const answer = value.toLowerCase();
    if (YES.has(answer)) this.#draft.isByHand = { value: false, line };
    if (NO.has(answer)) this.#draft.isByHand = { value: true, line };
  }

  #addWord(word: string, line: number): boolean {
    if (this.#meaning === 'dns') {
      const isAddress = addDns(this.#draft, word, line);
      this.#hasAnything ||= isAddress;
      return isAddress;
    }
    const ipv4 = address4(word);
    const ipv6 = ipv4 === undefined ? address6(word) : undefined;
    if (ipv4 !== undefined) this.#addAddress4(ipv4, line);
    if (ipv6 !== undefined && !UNSPECIFIED.test(word)) this.#addAddress6(ipv6, line);
    return ipv4 !== undefined || ipv6 !== undefined;
  }

  #addAddress4(address: NonNullable<ReturnType<typeof address4>>, line: number): void {
    if (isBlank(address) || this.#meaning === 'other') return;
    this.#hasAnything = true;
    if (this.#meaning === 'address') {
      this.#draft.addresses.push({ address, line });
      this.#awaitsMask = true;
      return;
    }
    this.#draft.gateways.push({ value: address, line });
    if (!this.#isNamed) this.#draft.unnamed = ['gateway'];
  }

  #addAddress6(value: NonNullable<ReturnType<typeof address6>>, line: number): void {
    if (this.#meaning === 'other') return;
    this.#hasAnything = true;
    if (this.#meaning === 'address') this.#draft.addresses6.push({ value, line });
    else this.#draft.gateways6.push({ value, line });
  }

  #addText(value: string, line: number): void {
    if (this.#meaning !== 'nameless') return;
    const mac = macOf(value.replaceAll('-', ':'));
    if (mac !== undefined) this.#draft.mac = { value: mac, line };
    else if (says(value, DISCONNECTED)) this.#draft.isUp = { value: false, line };
    else this.#describe(value);
    if (mac !== undefined) this.#hasAnything = true;
  }

  /** Windows prints the description before the hardware address. */
  #describe(value: string): void {
    if (this.#draft.mac !== undefined || this.#meaning !== 'nameless') return;
    this.#description = `${this.#description} ${value}`.slice(0, 400);
    this.#draft.kind = kindOfWindowsAdapter(this.#heading, this.#description);
  }
}

function meaningOf(label: string): Meaning {
  if (DNS.test(label)) return 'dns';
  return IP.test(label) ? 'address' : 'nameless';
}

/** `172.23.40.57(Preferred)` without its note. */
function firstWord(value: string): string {
  return /^[^\s(]{0,64}/.exec(value)?.[0] ?? '';
}
