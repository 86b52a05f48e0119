/** Whole numbers 0 to 2^32 - 1, the same for the same seed: mulberry32 (public domain, from memory). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (mixed ^ (mixed >>> 14)) >>> 0;
  };
}

/** The first of so many inputs on which two answers differ, with both; undefined where they never do. */
export function firstDifference(
  count: number,
  answers: () => { readonly input: string; readonly ours: string; readonly theirs: string },
): string | undefined {
  for (let run = 0; run < count; run++) {
    const { input, ours, theirs } = answers();
    if (ours !== theirs) return `${input}: ours ${ours}, theirs ${theirs}`;
  }
  return undefined;
}
