import { KINDS, type RuleBase } from './records.js';

/** Orders by code unit, so that every machine sorts alike, whatever its language. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * A rule base as one JSON text that is the same however its files were written: names sorted, records sorted by
 * id, `$schema` left out, no spaces.
 */
export function canonicalText(rulebase: RuleBase): string {
  const parts = KINDS.map((kind) => [
    kind,
    [...rulebase[kind]].sort((a, b) => byText(a.id, b.id)).map(plain),
  ]);
  return canonicalJson({ manifest: plain(rulebase.manifest), ...Object.fromEntries(parts) });
}

function plain(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([name]) => name !== '$schema'));
}

/** JSON with names in the order of their UTF-16 code units and without spaces (RFC 8785, on JSON values). */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).sort(([a], [b]) => byText(a, b));
  return `{${fields.map(([name, inner]) => `${JSON.stringify(name)}:${canonicalJson(inner)}`).join(',')}}`;
}

/** SHA-256 of a text's UTF-8 bytes in hexadecimal (FIPS 180-4), by the platform's own Web Crypto. */
export async function digestOfText(text: string): Promise<string> {
  const digest = await globalThis.crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The digest that tells two rule bases apart: the same for a folder and for the file built from it. */
export function digestOf(rulebase: RuleBase): Promise<string> {
  return digestOfText(canonicalText(rulebase));
}
