import { isBlank } from '../../values/address.js';
import type { Adapter, At, Owner } from '../seen.js';
import type { Bound } from './bind.js';
import { adapterOf, type Group, isEmpty, isSettled, newGroup } from './group.js';
import { nameIn } from './name-in.js';
import type { Entry } from './run.js';

export interface Devices {
  readonly adapters: readonly Adapter[];
  readonly lines: ReadonlySet<number>;
}

const MOST_WORDS_OF_NAME = 4;
/** No device has more gateways or name servers than this. */
const MOST_OF_A_KIND = 16;

/** The devices that a run of lines tells of. */
export function devicesOf(entries: readonly Entry[]): Devices {
  const filling = new Filling(entries);
  for (const entry of entries) filling.add(entry);
  return filling.done();
}

class Filling {
  readonly #groups: Group[] = [];
  #group = newGroup('', 'unknown');
  /** Whose the devices are that have a heading of their own below a common one. */
  #section: Owner = 'unknown';
  #heading: { readonly name: string; readonly line: number } | undefined;
  /** Whether words name the address or the mask anywhere; then a router is the gateway of what is described. */
  readonly #usesWords: boolean;
  readonly #hasLabels: boolean;

  constructor(entries: readonly Entry[]) {
    const bounds = entries.flatMap((entry) => entry.bounds);
    this.#usesWords = bounds.some(
      (bound) => bound.as === 'address' || (bound.as === 'mask' && bound.isNamed),
    );
    this.#hasLabels =
      this.#usesWords ||
      entries.some((entry) => entry.looked.isByHand !== undefined) ||
      bounds.some((bound) => ['gateway', 'dns', 'dhcp-server'].includes(bound.as) || isRouter(bound));
  }

  add(entry: Entry): void {
    const { looked, number } = entry;
    if (looked.called !== undefined) this.#call(looked.called, number);
    else if (entry.isSpentLabel && (looked.heading?.device ?? 'router') === 'router')
      this.#group.lines.push(number);
    else if (entry.bounds.length > 0) this.#fill(entry);
    else if (looked.heading !== undefined) this.#head(looked.heading, number, looked.link !== undefined);
    if (looked.link !== undefined && this.#group.kind === 'unknown') this.#group.kind = looked.link;
    if (looked.isByHand !== undefined) {
      this.#group.isByHand = { value: looked.isByHand, line: number };
      // A row of an ARP table ends in `dynamic` or `static` too.
      if (entry.bounds.every((bound) => bound.as !== 'lone')) this.#group.isNamed = true;
      this.#group.lines.push(number);
    }
    if (looked.heading === undefined) this.#heading = undefined;
  }

  done(): Devices {
    this.#close();
    const lines = new Set<number>();
    const adapters = this.#groups.flatMap((group) => {
      const adapter = adapterOf(group, this.#hasLabels);
      if (adapter === undefined) return [];
      const open = isSettled(group, adapter) ? undefined : new Set(group.others.map((other) => other.line));
      const settled = open === undefined ? group.lines : group.lines.filter((line) => !open.has(line));
      for (const line of settled) lines.add(line);
      return settled.length === 0 ? [] : [adapter];
    });
    return { adapters, lines };
  }

  #close(): void {
    if (!isEmpty(this.#group)) this.#groups.push(this.#group);
  }

  #open(name: string, owner: Owner): void {
    this.#close();
    this.#group = newGroup(name, owner);
  }

  #head(heading: { readonly name: string; readonly device?: Owner }, line: number, isLink: boolean): void {
    if (heading.device !== undefined) {
      this.#open(heading.name, heading.device);
      this.#section = 'unknown';
      this.#group.lines.push(line);
    } else if (!isEmpty(this.#group)) {
      this.#heading = { name: heading.name, line };
    } else {
      if (this.#group.owner !== 'unknown') this.#section = this.#group.owner;
      if (!isLink || this.#group.name === '') this.#group.name = heading.name;
      if (isLink) this.#group.lines.push(line);
      this.#heading = { name: heading.name, line };
    }
  }

  #call(name: string, line: number): void {
    if (this.#group.name !== '' && this.#group.address !== undefined) this.#open('', this.#group.owner);
    this.#group.name = nameIn(name);
    this.#group.lines.push(line);
  }

  #fill(entry: Entry): void {
    const {
      number,
      looked: { text },
    } = entry;
    let from = 0;
    let isPlaced = entry.misfits === 0;
    for (const bound of entry.bounds) {
      if (this.#bringsAddress(bound, entry)) this.#begin(bound, nameBefore(entry, from, bound));
      if (!this.#place(bound, number)) isPlaced = false;
      from = bound.end;
    }
    if (this.#heading !== undefined && this.#heading.name === this.#group.name) {
      this.#group.lines.push(this.#heading.line);
    }
    if (isPlaced && text !== '') this.#group.lines.push(number);
  }

  /** Whether the value is the address of a device, and so may be the first of another one. */
  #bringsAddress(bound: Bound, entry: Entry): boolean {
    if (!('address' in bound)) return false;
    if (bound.as === 'lone') {
      return (
        this.#group.address === undefined ||
        (bound.mask !== undefined && !this.#isOnLine(entry)) ||
        startsRow(entry, bound, this.#group)
      );
    }
    return (bound.as === 'address' || bound.as === 'device') && !this.#isGateway(bound, entry);
  }

  #isOnLine(entry: Entry): boolean {
    return this.#group.address?.line === entry.number;
  }

  /** `router 172.23.40.1` among the words for address and mask is the gateway, in a list of devices a device. */
  #isGateway(bound: Bound, entry: Entry): boolean {
    if (!isRouter(bound)) return false;
    if (bound.as === 'device') return this.#usesWords;
    return this.#group.address !== undefined && this.#group.owner !== 'router' && entry.bounds.length === 1;
  }

  #begin(bound: Bound, name: string): void {
    const device: Owner = ('device' in bound ? bound.device : undefined) ?? 'unknown';
    if (this.#group.address !== undefined) {
      const isUnderHeading = this.#heading !== undefined;
      this.#open(this.#heading?.name ?? '', isUnderHeading ? this.#section : this.#group.owner);
    }
    if (device !== 'unknown' && device !== this.#group.owner) {
      if (!isEmpty(this.#group) && this.#group.owner !== 'unknown') this.#open('', device);
      this.#group.owner = device;
    }
    if (device !== 'unknown') this.#group.isNamed = true;
    const isRow = bound.as === 'lone' || device !== 'unknown';
    if (name !== '' && (isRow || this.#group.name === '')) this.#group.name = name;
    this.#group.isAddressNamed = bound.as !== 'lone';
  }

  #place(bound: Bound, line: number): boolean {
    const group = this.#group;
    if (bound.as === 'mask') {
      group.mask ??= { value: bound.mask, line };
      if (bound.isNamed) group.isNamed = true;
      return true;
    }
    if (bound.as === 'mac') {
      group.mac ??= { value: bound.mac, line };
      return true;
    }
    if (bound.as !== 'lone') group.isNamed = true;
    if ('address6' in bound) return put(sixes(group, bound.as), { value: bound.address6, line });
    if (isBlank(bound.address)) return true;
    const at = { value: bound.address, line };
    if (bound.as === 'gateway') return put(group.gateways, at);
    if (bound.as === 'dns') return put(group.dns, at);
    if (bound.as === 'dhcp-server') {
      group.dhcpServer ??= at;
      return true;
    }
    if (isRouter(bound) && group.address !== undefined) return put(group.gateways, at);
    if (isRouter(bound) && bound.as === 'device' && this.#usesWords) return put(group.gateways, at);
    if (group.address === undefined) {
      group.address = { ...at, ...(bound.mask === undefined ? {} : { mask: bound.mask }) };
      return true;
    }
    group.others.push(at);
    return true;
  }
}

function isRouter(bound: Bound): boolean {
  return 'device' in bound && bound.device === 'router';
}

/** Whether a line begins with a name and an address, as a row of a list of devices does. */
function startsRow(entry: Entry, bound: Bound, group: Group): boolean {
  return entry.bounds[0] === bound && !entry.looked.isLone && group.address?.line !== entry.number;
}

/** The words before the first word for a value, or before the value; of later ones only with a device among them. */
function nameBefore(entry: Entry, from: number, bound: Bound): string {
  const tokens = entry.looked.tokens.filter((token) => token.start >= from && token.start < bound.start);
  const end = tokens.find(
    (token) =>
      token.type === 'field' ||
      token.type === 'state' ||
      (token.type === 'value' && token.value.shape !== 'number'),
  );
  const before = tokens.filter((token) => token.start < (end?.start ?? bound.start));
  const words = before.filter((token) => token.type !== 'sign');
  const isName = words.every((token) => ['word', 'device', 'value', 'link', 'name'].includes(token.type));
  if (!isName || words.length > MOST_WORDS_OF_NAME) return '';
  if (from > 0 && !words.some((token) => token.type === 'device')) return '';
  return nameIn(entry.looked.text.slice(before[0]?.start ?? 0, before.at(-1)?.end ?? 0));
}

function sixes(group: Group, as: Bound['as']): Group['addresses6'] {
  if (as === 'gateway') return group.gateways6;
  return as === 'dns' ? group.dns6 : group.addresses6;
}

function put<T>(list: At<T>[], value: At<T>): boolean {
  if (list.length >= MOST_OF_A_KIND) return false;
  if (!list.some((other) => JSON.stringify(other.value) === JSON.stringify(value.value))) list.push(value);
  return true;
}
