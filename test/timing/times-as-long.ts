const MOST_TRIES = 4;

/**
 * How many times as long one thing takes as another. Machines differ and are busy, by a factor of two and more, so that
 * a time alone tells little: both are measured in turn, and each counts by its best of some tries, of which there are
 * no more once `isEnough`.
 */
export function timesAsLong(
  work: () => void,
  other: () => void,
  isEnough: (times: number) => boolean,
): number {
  let [best, bestOther] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let count = 0; count < MOST_TRIES && !isEnough(best / bestOther); count++) {
    bestOther = Math.min(bestOther, millisecondsOf(other));
    best = Math.min(best, millisecondsOf(work));
  }
  return best / bestOther;
}

/** The same for work that is awaited. */
export async function timesAsLongAwaited(
  work: () => Promise<unknown>,
  other: () => void,
  isEnough: (times: number) => boolean,
): Promise<number> {
  let [best, bestOther] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let count = 0; count < MOST_TRIES && !isEnough(best / bestOther); count++) {
    bestOther = Math.min(bestOther, millisecondsOf(other));
    const stop = clock();
    await work();
    best = Math.min(best, stop());
  }
  return best / bestOther;
}

/**
 * Milliseconds that something takes at its best of some tries, of which there are no more once it took less than `most`:
 * a pause of the machine is not the work's.
 */
export function bestMilliseconds(work: () => void, most: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let count = 0; count < MOST_TRIES && !(best < most); count++)
    best = Math.min(best, millisecondsOf(work));
  return best;
}

function millisecondsOf(work: () => void): number {
  const stop = clock();
  work();
  return stop();
}

/** Gives the milliseconds since then, of the wall's clock or the processor's, whichever shows less. */
function clock(): () => number {
  const [wall, used] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(used);
    return Math.min(performance.now() - wall, (user + system) / 1000);
  };
}
