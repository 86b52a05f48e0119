import { existsSync, readdirSync, readFileSync } from 'node:fs';
import ipaddr from 'ipaddr.js';
import type { Line, Parser } from '../../../src/intake/parser.js';
import type { Seen } from '../../../src/intake/seen.js';
import { type Address, showAddress } from '../../../src/values/address.js';
import { type Address6, showAddress6 } from '../../../src/values/address6.js';
import { type Mask, showMask } from '../../../src/values/mask.js';

/** Lines by a plain split. */
export function plainLines(text: string): readonly Line[] {
  return text.split(/\r?\n/).map((line, index) => ({ number: index + 1, text: line.trimEnd() }));
}

export interface ReadAlone {
  readonly seen: Partial<Seen>;
  readonly understood: ReadonlySet<number>;
}

/** What one parser alone makes of a text, asked again behind all that it took. */
export function readAlone(parser: Parser, lines: readonly Line[]): ReadAlone {
  const seen: Record<string, unknown[]> = {};
  const understood = new Set<number>();
  const places = new Map(lines.map((line, index) => [line.number, index]));
  let from = parser.claims(lines, 0);
  while (from >= 0) {
    const taken = parser.take(lines, from);
    let last = from;
    for (const number of taken.lines) {
      understood.add(number);
      last = Math.max(last, places.get(number) ?? last);
    }
    for (const [part, values] of Object.entries(taken.seen)) {
      if (values.length === 0) continue;
      const all = seen[part] ?? [];
      for (const value of values) all.push(value);
      seen[part] = all;
    }
    const next = parser.claims(lines, last + 1);
    if (next >= 0 && next <= last) throw new Error(`${parser.name} claims a line before ${last + 1}`);
    from = next;
  }
  return { seen: seen as Partial<Seen>, understood };
}

/** The same with addresses and masks as text; empty lists of adapters are left out. */
export function shown(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shown);
  if (typeof value !== 'object' || value === null) return value;
  const kind = (value as { kind?: unknown }).kind;
  if (kind === 'ipv4') return showAddress(value as Address);
  if (kind === 'ipv6') return showAddress6(value as Address6);
  if (kind === 'mask') return showMask(value as Mask);
  const kept = Object.entries(value).filter(([, it]) => !(Array.isArray(it) && it.length === 0));
  return Object.fromEntries(kept.map(([key, it]) => [key, shown(it)]));
}

export interface Sample {
  readonly name: string;
  readonly text: string;
  readonly source: string;
  readonly seen: unknown;
  /** Lines that are not blank and that the parser rightly leaves to others. */
  readonly unread: readonly number[];
}

/** The samples of a parser, each with what it must give. */
export function samplesOf(parser: string): readonly Sample[] {
  const folder = new URL(`../samples/${parser}/`, import.meta.url);
  return (existsSync(folder) ? readdirSync(folder) : [])
    .filter((file) => file.endsWith('.txt'))
    .sort()
    .map((file) => {
      const text = readFileSync(new URL(file, folder), 'utf8');
      const sidecar = JSON.parse(readFileSync(new URL(file.replace(/txt$/, 'json'), folder), 'utf8'));
      return { name: file, text, source: sidecar.source, seen: sidecar.seen, unread: sidecar.unread ?? [] };
    });
}

/** All line numbers that stand in what was seen. */
export function linesIn(value: unknown): readonly number[] {
  if (Array.isArray(value)) return value.flatMap(linesIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, it]) => (key === 'line' ? [it as number] : linesIn(it)));
}

/** All addresses that were seen, as text. */
export function addressesIn(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(addressesIn);
  if (typeof value !== 'object' || value === null) return [];
  const kind = (value as { kind?: unknown }).kind;
  if (kind === 'ipv4') return [showAddress(value as Address)];
  if (kind === 'ipv6') return [ipaddr.parse(showAddress6(value as Address6)).toNormalizedString()];
  return Object.values(value).flatMap(addressesIn);
}

/** All addresses that ipaddr.js finds in a text, whatever stands around them; networks of the BSDs filled up. */
export function addressesOf(text: string): ReadonlySet<string> {
  const plain = text.replaceAll('\\:', ':');
  const found = new Set<string>();
  for (const [word] of plain.matchAll(/[0-9a-f.]*:[0-9a-f:.]*/gi)) {
    // A label's colon can stand right before it.
    for (const bare of [word, word.replace(/^:/, '')]) {
      if (ipaddr.IPv6.isValid(bare)) found.add(ipaddr.IPv6.parse(bare).toNormalizedString());
    }
  }
  for (const [word] of plain.matchAll(/(?<![\d.])\d{1,3}(?:\.\d{1,3}){0,3}(?![\d.])/g)) {
    const full = [...word.split('.'), '0', '0', '0'].slice(0, 4).join('.');
    if (ipaddr.IPv4.isValidFourPartDecimal(full)) found.add(full);
  }
  if (/\bdefault\b/.test(plain)) found.add('0.0.0.0');
  return found;
}
