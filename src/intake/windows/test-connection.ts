import type { Address } from '../../values/address.js';
import type { Hop, Lookup, Ping, PingTrouble, PortTry, Seen, Trace } from '../seen.js';
import { address4 } from '../unix/words.js';
import { type ListField, valuesOf } from './list-field.js';

/** Only what stands before the colon is translated. */
const COMPLAINT =
  /^ {0,4}\p{L}{2,20} ?: ?(?:TCP connect to \((\S{1,255}) : (\d{1,5})\) failed|Ping to (\S{1,255}) failed(?: with status: (\w{1,40}))?|Name resolution of (\S{1,255}) failed)/u;
const KINDS: ReadonlyMap<string, PingTrouble['kind']> = new Map([
  ['TimedOut', 'timed-out'],
  ['DestinationHostUnreachable', 'host-unreachable'],
  ['DestinationNetworkUnreachable', 'net-unreachable'],
  ['TtlExpired', 'ttl-expired'],
]);
/** A name that is not kept: it stands under the label of the computer's own. */
const DROPPED = /^\[\w{1,20}\]$/;
const MILLISECONDS = /^(\d{1,7}) ms$/;

export type Complaint =
  | { readonly kind: 'port'; readonly target: string; readonly port: number }
  | { readonly kind: 'ping'; readonly target: string; readonly trouble: PingTrouble['kind'] }
  | { readonly kind: 'name'; readonly target: string };

/** `WARNING: TCP connect to (172.23.40.57 : 554) failed`. */
export function complaintIn(text: string): Complaint | undefined {
  const [, host, port, pinged, status, name] = text.includes(':') ? (COMPLAINT.exec(text) ?? []) : [];
  if (host !== undefined) return { kind: 'port', target: host, port: Number(port) };
  if (pinged !== undefined)
    return { kind: 'ping', target: pinged, trouble: KINDS.get(status ?? '') ?? 'failed' };
  return name === undefined ? undefined : { kind: 'name', target: name };
}

/** A test of a connection while its warnings and its properties are read. */
export class ConnectionTest {
  readonly #values = new Map<string, { readonly value: string; readonly line: number }>();
  readonly #troubles: PingTrouble[] = [];
  readonly #failed: PortTry[] = [];
  readonly #hops: Hop[] = [];
  #missing: Lookup | undefined;
  #label = '';

  has(label: string): boolean {
    return this.#values.has(label);
  }

  complain(complaint: Complaint, line: number): void {
    const { kind, target } = complaint;
    if (kind === 'ping') this.#troubles.push({ kind: complaint.trouble, line });
    if (kind === 'name') this.#missing = { name: target, addresses: [], outcome: 'failed', line };
    if (kind === 'port' && isPort(complaint.port))
      this.#failed.push({ target, ...placed(address4(target)), port: complaint.port, isOpen: false, line });
  }

  add({ label, value }: ListField, line: number): void {
    this.#values.set(label, { value, line });
    this.#label = label;
    this.goOn(value, line);
  }

  /** Further values of the last property: of them only the way there is told on several lines. */
  goOn(value: string, line: number): void {
    if (this.#label !== 'TraceRoute') return;
    for (const word of valuesOf(value)) {
      const address = address4(word);
      const isSilent = address === undefined || address.bits === 0;
      this.#hops.push({ number: this.#hops.length + 1, ...(!isSilent && { address }), line });
    }
  }

  seen(): Partial<Seen> {
    return {
      lookups: this.#missing === undefined ? [] : [this.#missing],
      pings: this.#pings(),
      ports: this.#ports(),
      traces: this.#traces(),
    };
  }

  get #address(): Address | undefined {
    const address = address4(this.#values.get('RemoteAddress')?.value);
    return address === undefined || address.bits === 0 ? undefined : address;
  }

  get #target(): string {
    const { value = '' } = this.#values.get('ComputerName') ?? {};
    const isKept = value !== '' && !DROPPED.test(value);
    return isKept ? value : (this.#values.get('RemoteAddress')?.value ?? '');
  }

  /** Nothing is pinged that has no address, whatever the list says of it. */
  #pings(): readonly Ping[] {
    const { value, line } = this.#values.get('PingSucceeded') ?? {};
    const isKnown = value === 'True' || value === 'False';
    if (!isKnown || line === undefined || this.#missing !== undefined) return [];
    const took = MILLISECONDS.exec(this.#values.get('PingReplyDetails (RTT)')?.value ?? '')?.[1];
    const isReached = value === 'True';
    return [
      {
        target: this.#target,
        ...placed(this.#address),
        sent: 1,
        received: isReached ? 1 : 0,
        ...(isReached && took !== undefined && { average: Number(took) }),
        troubles: this.#troubles,
        hasDuplicates: false,
        line,
      },
    ];
  }

  #ports(): readonly PortTry[] {
    const { value, line } = this.#values.get('TcpTestSucceeded') ?? {};
    const port = Number(this.#values.get('RemotePort')?.value ?? Number.NaN);
    const isKnown = value === 'True' || value === 'False';
    // A text that broke off before the list still has the warnings.
    if (!isKnown || line === undefined || !isPort(port)) return this.#failed;
    return [{ target: this.#target, ...placed(this.#address), port, isOpen: value === 'True', line }];
  }

  #traces(): readonly Trace[] {
    const [first] = this.#hops;
    if (first === undefined) return [];
    return [{ target: this.#target, ...placed(this.#address), hops: this.#hops, line: first.line }];
  }
}

function placed(address: Address | undefined): { readonly address?: Address } {
  return address === undefined ? {} : { address };
}

function isPort(port: number): boolean {
  return Number.isInteger(port) && port >= 1 && port <= 65_535;
}
