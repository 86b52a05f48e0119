import { sameSubnet } from '../../arithmetic/subnet.js';
import { type Address, type AddressWithMask, parseAddress } from '../../values/address.js';
import { isLocal } from '../may-touch.js';
import { type Found, isSameMessage, parseAnswer } from './answer.js';

/** A device that answered, with the address that its answer came from. */
export interface Answered extends Found {
  readonly from: Address;
}

const MOST_ANSWERS = 64;
const LONGEST_ANSWER = 65_536;
/** A camera has a lead, Wi-Fi and a few addresses on each. */
const MOST_ADDRESSES = 16;

/** The answers to one probe, as they come in. */
export class Answers {
  readonly #uuid: string;
  readonly #own: readonly AddressWithMask[];
  readonly #found = new Map<string, Answered>();
  #count = 0;

  constructor(uuid: string, own: readonly AddressWithMask[]) {
    this.#uuid = uuid;
    this.#own = own;
  }

  get isFull(): boolean {
    return this.#count >= MOST_ANSWERS;
  }

  /** The devices, in the order in which they answered first. */
  get found(): readonly Answered[] {
    return [...this.#found.values()];
  }

  /**
   * Takes a datagram in, or drops it: from an address that is neither in a range of this computer nor a local one, as a
   * multicast that passes no router reaches none such; not UTF-8; to another message; or one too many. Never throws.
   */
  take(bytes: Uint8Array, sender: string): void {
    if (this.isFull || bytes.length > LONGEST_ANSWER) return;
    const from = parseAddress(sender);
    if (!from.ok || !this.#isNear(from.value)) return;
    const found = parseAnswer(textOf(bytes)).filter(({ relatesTo }) => isSameMessage(relatesTo, this.#uuid));
    if (found.length > 0) this.#count += 1;
    for (const one of found) this.#add({ ...one, from: from.value });
  }

  #isNear(address: Address): boolean {
    return isLocal(address) || this.#own.some((own) => sameSubnet(own.address, own.mask, address));
  }

  /** A device with several adapters answers from each. */
  #add(one: Answered): void {
    const before = this.#found.get(one.endpoint);
    if (before === undefined && this.#found.size >= MOST_ANSWERS) return;
    const known = before?.addresses ?? [];
    const more = one.addresses.filter(({ bits }) => known.every((address) => address.bits !== bits));
    const addresses = [...known, ...more].slice(0, MOST_ADDRESSES);
    this.#found.set(one.endpoint, { ...(before ?? one), addresses });
  }
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return '';
  }
}
