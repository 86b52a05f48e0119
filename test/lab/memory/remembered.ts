import type { Look } from '../types.js';

export type Seen = Look['answer'];

/** What people on one broken site say to each question, and what mends it: one list of remedies for each thing wrong. */
export interface BrokenSite {
  readonly causes: readonly string[];
  readonly parts: readonly (readonly string[])[];
  readonly sees: Readonly<Record<string, Seen>>;
}

/** The whole lab, written down once. A broken site says only what differs from the usual. */
export interface Remembered {
  readonly format: 1;
  readonly usual: Readonly<Record<string, Seen>>;
  readonly sites: Readonly<Record<string, BrokenSite>>;
}

/** What most sites say to a question is said once. */
export function folded(sites: Readonly<Record<string, BrokenSite>>): Remembered {
  const questions = [...new Set(Object.values(sites).flatMap(({ sees }) => Object.keys(sees)))].sort();
  const usual = Object.fromEntries(
    questions.flatMap((question) => {
      const seen = mostOften(Object.values(sites).flatMap(({ sees }) => sees[question] ?? []));
      return seen ? [[question, seen]] : [];
    }),
  );
  const differing = (sees: BrokenSite['sees']): BrokenSite['sees'] =>
    byName(Object.entries(sees).filter(([question, seen]) => !same(seen, usual[question])));
  return {
    format: 1,
    usual,
    sites: byName(Object.entries(sites).map(([id, site]) => [id, { ...site, sees: differing(site.sees) }])),
  };
}

/** Every site with all that is said there. */
export function unfolded({ usual, sites }: Remembered): Readonly<Record<string, BrokenSite>> {
  return byName(
    Object.entries(sites).map(([id, site]) => [id, { ...site, sees: { ...usual, ...site.sees } }]),
  );
}

/** What people on that site say; undefined for a question that was not there when the lab was written down. */
export function seenAt({ usual, sites }: Remembered, id: string, question: string): Seen | undefined {
  return sites[id]?.sees[question] ?? usual[question];
}

function same(one: Seen | undefined, other: Seen | undefined): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function byName<T>(entries: readonly (readonly [string, T])[]): Record<string, T> {
  return Object.fromEntries([...entries].sort(([one], [other]) => (one < other ? -1 : 1)));
}

function mostOften(said: readonly Seen[]): Seen | undefined {
  const counts = new Map<string, { readonly seen: Seen; many: number }>();
  for (const seen of said) {
    const known = counts.get(JSON.stringify(seen)) ?? { seen, many: 0 };
    known.many += 1;
    counts.set(JSON.stringify(seen), known);
  }
  return [...counts.values()].sort((one, other) => other.many - one.many)[0]?.seen;
}
