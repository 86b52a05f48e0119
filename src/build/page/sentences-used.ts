/** A whole id of a sentence in quotes, and the beginning of one whose rest is filled in. */
const WHOLE = /['"`]([a-z][a-z0-9-]*(?:\.[a-z0-9-]+)+)['"`]/gi;
const BEGINNING = /`([a-z][a-z0-9-]*\.[a-z0-9.-]*)\$\{/gi;

/**
 * The sentences that these sources can say, out of all: those whose id stands in them, whole or by its beginning.
 * Ids are never put together otherwise, so nothing that is said is missing; some that are never said stay.
 */
export function sentencesUsed(
  all: Readonly<Record<string, string>>,
  sources: readonly string[],
): Readonly<Record<string, string>> {
  const whole = new Set(sources.flatMap((text) => [...text.matchAll(WHOLE)].map(([, id = '']) => id)));
  const beginnings = [
    ...new Set(sources.flatMap((text) => [...text.matchAll(BEGINNING)].map(([, head = '']) => head))),
  ];
  return Object.fromEntries(
    Object.entries(all).filter(([id]) => whole.has(id) || beginnings.some((head) => id.startsWith(head))),
  );
}
