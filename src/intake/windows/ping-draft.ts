import type { Address } from '../../values/address.js';
import type { Ping, PingTrouble } from '../seen.js';
import type { WindowsPingLine } from './ping-lines.js';

/** A ping of Windows while its lines are read. */
export class WindowsPingDraft {
  #hasHead = false;
  #target: string | undefined;
  #address: Address | undefined;
  #replies = 0;
  #refusals = 0;
  #counts: { readonly sent: number; readonly received: number } | undefined;
  #average: number | undefined;
  readonly #troubles: PingTrouble[] = [];
  readonly #line: number;

  constructor(line: number) {
    this.#line = line;
  }

  get hasHead(): boolean {
    return this.#hasHead;
  }

  get isCounted(): boolean {
    return this.#counts !== undefined;
  }

  get isTimed(): boolean {
    return this.#average !== undefined;
  }

  /** Whether a line of that target can belong to this ping. */
  isOf(target: string, address: Address | undefined): boolean {
    if (this.#target === undefined || target === this.#target) return true;
    return address !== undefined && address.bits === this.#address?.bits;
  }

  add(said: WindowsPingLine, line: number): void {
    if (said.kind === 'head' || said.kind === 'count' || said.kind === 'no-such-name') {
      this.#target ??= said.target;
      if ('address' in said) this.#address ??= said.address;
    }
    if (said.kind === 'head') this.#hasHead = true;
    if (said.kind === 'no-such-name') this.#troubles.push({ kind: 'no-such-name', line });
    if (said.kind === 'trouble') this.#troubles.push({ kind: said.trouble, line });
    if (said.kind === 'refused') this.#refuse(said.trouble, said.from, line);
    if (said.kind === 'reply') {
      this.#replies += 1;
      if (this.#target === undefined) this.#address = said.from;
      this.#target ??= said.source;
    }
  }

  /** The closing numbers: first how many, then how long. */
  addNumbers(one: number, two: number, three: number): void {
    if (this.#counts === undefined) this.#counts = { sent: one, received: two };
    else this.#average = three;
  }

  ping(): Ping {
    const tried =
      this.#replies + this.#refusals + this.#troubles.filter(({ kind, from }) => isTry(kind, from)).length;
    return {
      target: this.#target ?? '',
      ...(this.#address !== undefined && { address: this.#address }),
      sent: this.#counts?.sent ?? tried,
      received: this.#received(),
      ...(this.#average !== undefined && { average: this.#average }),
      troubles: this.#troubles,
      hasDuplicates: false,
      line: this.#line,
    };
  }

  /** Where no reply was measured and some were refused, the others that Windows counts were, too. */
  #received(): number {
    if (this.#counts === undefined) return this.#replies;
    if (this.#refusals > 0 && this.#replies === 0 && this.#average === undefined) return 0;
    return Math.max(0, this.#counts.received - this.#refusals);
  }

  /** Windows counts it as received. In an unknown language only that it is no reply of the target can be told. */
  #refuse(kind: PingTrouble['kind'] | undefined, from: Address | undefined, line: number): void {
    this.#refusals += 1;
    if (kind !== undefined) this.#troubles.push({ kind, ...(from !== undefined && { from }), line });
  }
}

/** Whether a trouble stands for a try that is counted nowhere else. */
function isTry(kind: PingTrouble['kind'], from: Address | undefined): boolean {
  return kind !== 'no-such-name' && from === undefined;
}
