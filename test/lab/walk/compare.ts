import { drawNetwork } from './draw.js';
import { judge } from './judge.js';
import type { Network } from './network.js';
import { type Answer, Pool } from './pool.js';

export interface Difference {
  readonly seed: number;
  readonly from: string;
  readonly to: string;
  readonly walk: string;
  readonly ping: string;
  readonly differences: readonly string[];
}

export interface Compared {
  readonly networks: number;
  readonly probes: number;
  readonly agreed: number;
  readonly differed: readonly Difference[];
  /** Probes by outcome of the walk. */
  readonly outcomes: Readonly<Record<string, number>>;
  /** Networks tried a second time with longer waits, because the first time differed. */
  readonly again: number;
  /** ARP answers that were foreseen and not needed, for the kernel had learnt them from the question itself. */
  readonly learnt: number;
}

/** Draws networks by the seed, asks walk and kernel, and counts. A difference is one that stays with longer waits. */
export async function compareWalk(count: number, seed: number, pools: number): Promise<Compared> {
  return compareAll(
    count,
    (at) => {
      const own = networkSeed(seed, at);
      return [own, drawNetwork(own)];
    },
    pools,
  );
}

/** The same for networks of one's own, each with a number to know it by. */
export async function compareAll(
  count: number,
  networkAt: (at: number) => readonly [number, Network],
  pools: number,
): Promise<Compared> {
  const opened = await openPools(Math.min(pools, count));
  const tally = { probes: 0, again: 0, learnt: 0 };
  const outcomes = new Map<string, number>();
  const differed: Difference[] = [];
  let next = 0;
  const work = async (pool: Pool): Promise<void> => {
    while (next < count) {
      const [seed, network] = networkAt(next);
      next += 1;
      let judged = differences(network, await pool.ask(network));
      if (judged.some((one) => one.differences.length > 0)) {
        tally.again += 1;
        judged = differences(network, await pool.ask(network, true));
      }
      for (const { outcome, learnt, ...one } of judged) {
        tally.probes += 1;
        tally.learnt += learnt;
        outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
        if (one.differences.length > 0) differed.push({ seed, walk: outcome, ...one });
      }
    }
  };
  try {
    await Promise.all(opened.map(work));
  } finally {
    await Promise.all(opened.map((pool) => pool.close()));
  }
  return {
    networks: count,
    ...tally,
    agreed: tally.probes - differed.length,
    differed,
    outcomes: Object.fromEntries([...outcomes].sort()),
  };
}

/** The seed of one network of a run: consecutive runs share none. */
export function networkSeed(seed: number, at: number): number {
  return (Math.imul(seed, 0x01000193) + at) >>> 0;
}

/** What differs, probe by probe. */
export function differences({ site, probes }: Network, answer: Answer) {
  return probes.map(([from, to], at) => {
    const seen = answer.probes[at];
    if (seen === undefined) throw new Error('a probe was not tried');
    const { walked, learnt, differences: found } = judge(site, from, to, seen);
    const outcome = walked.back?.stop ? `${walked.outcome}: ${walked.back.stop}` : walked.outcome;
    return { from, to, outcome, learnt, ping: seen.said, differences: found };
  });
}

/** Opens pools side by side; closes those that opened when one does not. */
async function openPools(count: number): Promise<readonly Pool[]> {
  const tried = await Promise.allSettled(Array.from({ length: count }, () => Pool.open()));
  const opened = tried.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : []));
  const failed = tried.find((one) => one.status === 'rejected');
  if (failed === undefined) return opened;
  await Promise.all(opened.map((pool) => pool.close()));
  throw failed.reason;
}
