const MOST = 4096;

/** The same function with a short memory of what it gave: an output says the same few words again and again. */
export function remembered<T>(of: (word: string) => T): (word: string) => T {
  const known = new Map<string, T>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined || known.has(word)) return before as T;
    const value = of(word);
    if (known.size >= MOST) known.clear();
    known.set(word, value);
    return value;
  };
}
