/** How many single letters must be changed, added or dropped to make one word of the other (Levenshtein 1966). */
export function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

const LONGEST = 60;

/** The known word nearest to a mistyped one, if it is near enough to be meant; ties go to the first by name. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  if (word.length > LONGEST) return undefined;
  const furthest = Math.max(1, Math.floor(word.length / 3));
  let best: { readonly word: string; readonly distance: number } | undefined;
  for (const candidate of [...known].sort()) {
    if (Math.abs(candidate.length - word.length) > furthest) continue;
    const distance = editDistance(word, candidate);
    if (distance <= furthest && (best === undefined || distance < best.distance))
      best = { word: candidate, distance };
  }
  return best?.word;
}
