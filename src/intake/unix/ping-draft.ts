import type { Address } from '../../values/address.js';
import type { Ping, PingTrouble } from '../seen.js';
import type { PingLine } from './ping-lines.js';
import { DUPLICATES, REDIRECTS, TWICE, troubleKind } from './ping-words.js';
import { says } from './words.js';

const NUMBER = /\+?\d{1,12}(?:[.,]\d{1,12})?/g;
/** `rtt min/avg/max/mdev = 0.4/0.5/0.6/0.1 ms`, with a comma in some languages. */
const TIMES = /= ?[\d.,]{1,20}\/([\d.,]{1,20})\/[\d.,]{1,20}/;

/** A ping while its lines are read. */
export class PingDraft {
  #target = '';
  #address: Address | undefined;
  #hasHead = false;
  #counts: { readonly sent: number; readonly received: number } | undefined;
  #average: number | undefined;
  #hasDuplicates = false;
  readonly #troubles: PingTrouble[] = [];
  readonly #tried = new Set<number>();
  readonly #answered = new Set<number>();
  readonly line: number;

  constructor(line: number) {
    this.line = line;
  }

  get hasHead(): boolean {
    return this.#hasHead;
  }

  get isCounted(): boolean {
    return this.#counts !== undefined;
  }

  /** The target that the closing line names, where the head is missing. */
  name(target: string): void {
    if (this.#target === '') this.#target = target;
  }

  add(said: PingLine, text: string, line: number): void {
    if (said.kind === 'head') {
      this.#hasHead = true;
      this.#target = said.target;
      this.#address = said.address;
    } else if (said.kind === 'reply') {
      if (!this.#hasHead) this.#address ??= said.from;
      this.#tried.add(said.sequence);
      this.#answered.add(said.sequence);
      if (says(text, TWICE)) this.#hasDuplicates = true;
    } else if (said.kind === 'silent') {
      this.#tried.add(said.sequence);
      this.#troubles.push({ kind: 'timed-out', line });
    } else if (said.kind === 'refused') {
      if (said.sequence !== undefined) this.#tried.add(said.sequence);
      this.#addRefusal(said.text, said.from, line);
    } else if (said.kind === 'complaint') {
      if (said.name !== undefined) this.name(said.name);
      this.#troubles.push({ kind: troubleKind(said.text) ?? 'failed', line });
    }
  }

  /** The closing count: the first two numbers in any language, then what came twice. Says whether it is one. */
  addCounts(text: string): boolean {
    const [sent, received] = text.match(NUMBER) ?? [];
    if (!text.includes('%') || sent === undefined || received === undefined) return false;
    if (!/^\d+$/.test(sent) || !/^\d+$/.test(received)) return false;
    this.#counts = { sent: Number(sent), received: Number(received) };
    if (says(text, DUPLICATES)) this.#hasDuplicates = true;
    return true;
  }

  /** The closing line of times. Says whether it is one. */
  addTimes(text: string): boolean {
    const average = Number(TIMES.exec(text)?.[1]?.replace(',', '.') ?? Number.NaN);
    if (!Number.isFinite(average)) return false;
    this.#average = average;
    return true;
  }

  ping(): Ping {
    const target = this.#target;
    return {
      target,
      ...(this.#address !== undefined && { address: this.#address }),
      sent: this.#counts?.sent ?? this.#tried.size,
      received: this.#counts?.received ?? this.#answered.size,
      ...(this.#average !== undefined && { average: this.#average }),
      troubles: this.#troubles,
      hasDuplicates: this.#hasDuplicates,
      line: this.line,
    };
  }

  #addRefusal(text: string, from: Address | undefined, line: number): void {
    const kind = troubleKind(text);
    if (kind === undefined && says(text, REDIRECTS)) return;
    this.#troubles.push({ kind: kind ?? 'failed', ...(from !== undefined && { from }), line });
  }
}
