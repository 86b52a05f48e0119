/** P′(value | hypothesis) of a finding, by value. */
export type Rows = readonly Float64Array[];

const NEGATIVE_ENTROPIES = new WeakMap<Rows, Float64Array>();

/** Σ over values of P′·ln P′, by hypothesis: the part of the information that no probability touches. */
function negativeEntropies(rows: Rows): Float64Array {
  const known = NEGATIVE_ENTROPIES.get(rows);
  if (known) return known;
  const sums = new Float64Array(rows[0]?.length ?? 0);
  for (const row of rows) {
    for (let h = 0; h < row.length; h++) {
      const share = row[h] ?? 0;
      if (share > 0) sums[h] = (sums[h] ?? 0) + share * Math.log(share);
    }
  }
  NEGATIVE_ENTROPIES.set(rows, sums);
  return sums;
}

/** The hypotheses left out in comparing findings are together no likelier than this. */
const LEFT_OUT = 1e-3;
const LIVE = new WeakMap<readonly number[], Int32Array>();

/** The likely hypotheses: the others, most of them late in a call, change nothing in what tells most. */
function liveAmong(probabilities: readonly number[]): Int32Array {
  const known = LIVE.get(probabilities);
  if (known) return known;
  const byChance = Int32Array.from(probabilities.keys()).sort(
    (a, b) => (probabilities[b] ?? 0) - (probabilities[a] ?? 0) || a - b,
  );
  let many = 0;
  for (let left = 1; left > LEFT_OUT && many < byChance.length; many++)
    left -= probabilities[byChance[many] ?? 0] ?? 0;
  const live = byChance.slice(0, many);
  LIVE.set(probabilities, live);
  return live;
}

/**
 * Mutual information of a finding and the hypotheses, in nats: which findings of a group are looked into.
 * Σₕ pₕ Σᵥ P′ ln P′ − Σᵥ c ln c, with c the chance of each value.
 */
export function information(probabilities: readonly number[], rows: Rows): number {
  const within = negativeEntropies(rows);
  const live = liveAmong(probabilities);
  let total = 0;
  for (const h of live) total += (probabilities[h] ?? 0) * (within[h] ?? 0);
  for (const row of rows) {
    let chance = 0;
    for (const h of live) chance += (row[h] ?? 0) * (probabilities[h] ?? 0);
    if (chance > 0) total -= chance * Math.log(chance);
  }
  return total;
}
