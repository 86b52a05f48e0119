/**
 * What an answer shows when it is wrong at rate e: P′(v|c) = (1 − e)·P(v|c) + e·(1 − P(v|c))/(K − 1),
 * a wrong answer being any of the other K − 1 values alike (the symmetric noisy channel of information theory).
 * From a rate of (K − 1)/K on the answer says nothing: no rate turns it into evidence for the opposite.
 * `share` 0 to 1, `errorRate` 0 to 1, `values` at least 2; gives 0 to 1.
 */
export function blur(share: number, errorRate: number, values: number): number {
  const rate = Math.min(errorRate, (values - 1) / values);
  return (1 - rate) * share + (rate * (1 - share)) / (values - 1);
}
