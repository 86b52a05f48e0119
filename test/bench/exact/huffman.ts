/** Entropy in bits: the least mean number of yes-or-no questions, were questions divisible (Shannon 1948). */
export function surprise(shares: readonly number[]): number {
  return shares.reduce((sum, p) => sum - (p > 0 ? p * Math.log2(p) : 0), 0);
}

/** Mean number of yes-or-no questions that find one of these, every question allowed (Huffman 1952). */
export function leastQuestions(shares: readonly number[]): number {
  const [least = 0, next, ...rest] = [...shares].sort((a, b) => a - b);
  return next === undefined ? 0 : least + next + leastQuestions([least + next, ...rest]);
}
