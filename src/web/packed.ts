import type { Call } from '../call/call.js';
import { BLOCKS } from './blocks.js';
import { readColumns } from './columns.js';

/** The rule base in the page, without what only its authors read, and the digest of the whole. */
export interface PackedRules {
  readonly rules: Call['rules'];
  readonly digest: string;
}

/** The rule base that the build put into the page. Throws where it is missing or cut. */
export function packedRules(page: Document): PackedRules {
  const block = page.getElementById(BLOCKS.rules);
  // What the build packed was checked against the schemas of the rule base before.
  const rules = readColumns(block?.textContent ?? '') as unknown as PackedRules['rules'];
  return { rules, digest: block?.dataset.digest ?? '' };
}

/** The texts of `knowledge/` by file, markdown and pictures. */
export type Articles = ReadonlyMap<string, string>;

let unpacked: Promise<Articles | undefined> | undefined;

/** Unpacks the articles when they are first wanted; `undefined` where this browser cannot. */
export function packedArticles(page: Document): Promise<Articles | undefined> {
  unpacked ??= unpack(page.getElementById(BLOCKS.articles)?.textContent ?? '').catch(() => undefined);
  return unpacked;
}

async function unpack(base64: string): Promise<Articles> {
  const bytes = Uint8Array.from(atob(base64.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const files: Record<string, string> = await new Response(stream).json();
  return new Map(Object.entries(files));
}
