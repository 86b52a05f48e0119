/**
 * Expected minutes Σ cᵢ·(1 − Σ pⱼ before i) of trying in the order of falling p ÷ c (Kadane and Simon 1977);
 * `chances` of the only fault, summing to 1, `minutes` to try and mend each.
 */
export function ratioOrderMinutes(chances: readonly number[], minutes: readonly number[]): number {
  const order = chances.map((p, at) => ({ p, c: minutes[at] ?? 0 })).sort((a, b) => b.p * a.c - a.p * b.c);
  let reached = 1;
  let expected = 0;
  for (const { p, c } of order) {
    expected += c * reached;
    reached -= p;
  }
  return expected;
}
