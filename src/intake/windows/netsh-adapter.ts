import { isBlank } from '../../values/address.js';
import { type AdapterDraft, addDns, draftOf } from '../unix/adapter-draft.js';
import { address4, maskOf, says } from '../unix/words.js';
import { kindOfWindowsAdapter } from './adapter-kind.js';
import { GATEWAY_LABELS, NO, YES } from './ipconfig-words.js';

const FIELD = /^ {0,12}([^\s:"][^:"]{1,70}?) ?: {0,60}(\S.{0,200})?$/;
const IP = /(?:^|[^a-z])IP(?:v4)?(?:[^a-z]|$)/i;
/** `172.23.40.0/24 (mask 255.255.255.0)`. */
const PREFIX = /^\d{1,3}(?:\.\d{1,3}){3}\/(\d{1,2})(?= |$)/;
const DOTTED = /^\d{1,3}(?:\.\d{1,3}){3}$/;
/** Of masks only those that can be no address of anybody. */
const MASK = /^(?:255|254|252|248|240|224|192|128)\.\d{1,3}\.\d{1,3}\.\d{1,3}$/;

export interface NetshField {
  readonly label: string;
  readonly value: string;
}

/** A label, a colon and a value. */
export function netshField(text: string): NetshField | undefined {
  const [, label, value = ''] = FIELD.exec(text) ?? [];
  return label === undefined ? undefined : { label, value };
}

/** An adapter while the fields below its name are read. */
export class NetshAdapter {
  readonly adapter: AdapterDraft;
  #isDns = false;

  constructor(name: string) {
    this.adapter = draftOf(name, kindOfWindowsAdapter(name, ''));
  }

  add({ label, value }: NetshField, line: number): void {
    this.#isDns = /DNS/i.test(label);
    if (this.#isDns) addDns(this.adapter, value, line);
    else if (/WINS/i.test(label)) return;
    else if (/DHCP/i.test(label)) this.#addDhcp(value.toLowerCase(), line);
    else if (!this.#addMask(value)) this.#addAddress(label, value, line);
  }

  /** A further server, on a line of its own. Says whether it was an address. */
  goOn(value: string, line: number): boolean {
    if (this.#isDns) return addDns(this.adapter, value, line);
    return address4(value) !== undefined;
  }

  #addDhcp(answer: string, line: number): void {
    if (YES.has(answer)) this.adapter.isByHand = { value: false, line };
    if (NO.has(answer)) this.adapter.isByHand = { value: true, line };
  }

  /** The mask stands below its address, as a prefix or, in Windows XP, by itself. */
  #addMask(value: string): boolean {
    const awaits = this.adapter.addresses.findIndex((one) => one.mask === undefined);
    const length = PREFIX.exec(value)?.[1];
    const mask = maskOf(length ?? (MASK.test(value) && awaits >= 0 ? value : undefined));
    if (mask === undefined) return length !== undefined;
    const address = this.adapter.addresses[awaits];
    if (address !== undefined) this.adapter.addresses[awaits] = { ...address, mask };
    return true;
  }

  #addAddress(label: string, value: string, line: number): void {
    const address = DOTTED.test(value) ? address4(value) : undefined;
    if (address === undefined || isBlank(address)) return;
    const isGateway = says(label, GATEWAY_LABELS);
    if (!isGateway && (IP.test(label) || this.adapter.addresses.length === 0)) {
      this.adapter.addresses.push({ address, line });
      return;
    }
    this.adapter.gateways.push({ value: address, line });
    if (!isGateway) this.adapter.unnamed = ['gateway'];
  }
}
