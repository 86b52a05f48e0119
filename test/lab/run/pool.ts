/** Does the work for each item, on as many hands as there are; results stand in the order of the items. */
export async function shared<H, I, R>(
  hands: readonly H[],
  items: readonly I[],
  work: (hand: H, item: I) => Promise<R>,
): Promise<readonly R[]> {
  const results: R[] = [];
  let next = 0;
  await Promise.all(
    hands.map(async (hand) => {
      while (next < items.length) {
        const at = next;
        next += 1;
        const item = items[at];
        if (item !== undefined) results[at] = await work(hand, item);
      }
    }),
  );
  return results;
}
