import { type AdapterDraft, addAddress, addDns, draftOf } from '../unix/adapter-draft.js';
import { address4, address6, macOf } from '../unix/words.js';
import { kindOfWindowsAdapter } from './adapter-kind.js';
import { type ListField, valuesOf } from './list-field.js';

type Meaning = 'address' | 'gateway' | 'dns' | 'description' | 'other';

const MEANINGS: ReadonlyMap<string, Meaning> = new Map([
  ['IPv4Address', 'address'],
  ['IPv6Address', 'address'],
  ['IPv6TemporaryAddress', 'address'],
  ['IPv6LinkLocalAddress', 'address'],
  ['IPv4DefaultGateway', 'gateway'],
  ['IPv6DefaultGateway', 'gateway'],
  ['DNSServer', 'dns'],
  ['InterfaceDescription', 'description'],
]);

/** An adapter while PowerShell's list of its properties is read. */
export class NetIpAdapter {
  readonly adapter: AdapterDraft = draftOf('', 'unknown');
  #description = '';
  #meaning: Meaning = 'other';

  add({ label, value }: ListField, line: number): void {
    this.#meaning = MEANINGS.get(label) ?? 'other';
    if (label === 'InterfaceAlias') this.adapter.name = value;
    if (label === 'NetAdapter.Status') this.#addStatus(value, line);
    if (label === 'NetIPv4Interface.DHCP' && /^(?:En|Dis)abled$/.test(value))
      this.adapter.isByHand = { value: value === 'Disabled', line };
    const mac = label === 'NetAdapter.LinkLayerAddress' ? macOf(value.replaceAll('-', ':')) : undefined;
    if (mac !== undefined) this.adapter.mac = { value: mac, line };
    this.goOn(value, line);
    this.adapter.kind = kindOfWindowsAdapter(this.adapter.name, this.#description);
  }

  /** Further values, or the rest of one. */
  goOn(value: string, line: number): void {
    if (this.#meaning === 'description') this.#description = `${this.#description} ${value}`.slice(0, 400);
    else if (this.#meaning !== 'other') for (const word of valuesOf(value)) this.#addWord(word, line);
    this.adapter.kind = kindOfWindowsAdapter(this.adapter.name, this.#description);
  }

  /** Whether it is up; of `Disabled` and `Not Present` PowerShell lists nothing more either. */
  #addStatus(value: string, line: number): void {
    if (value !== '') this.adapter.isUp = { value: value === 'Up', line };
  }

  #addWord(word: string, line: number): void {
    if (this.#meaning === 'dns') addDns(this.adapter, word, line);
    else if (this.#meaning === 'address') addAddress(this.adapter, word, undefined, line);
    else {
      const ipv4 = address4(word);
      const ipv6 = ipv4 === undefined ? address6(word) : undefined;
      if (ipv4 !== undefined) this.adapter.gateways.push({ value: ipv4, line });
      if (ipv6 !== undefined) this.adapter.gateways6.push({ value: ipv6, line });
    }
  }
}
