/** The places in a list whose key stood earlier in it. */
export function repeated<T>(list: readonly T[], keyOf: (item: T) => string): readonly number[] {
  const seen = new Set<string>();
  return list.flatMap((item, i) => {
    const key = keyOf(item);
    if (seen.has(key)) return [i];
    seen.add(key);
    return [];
  });
}
