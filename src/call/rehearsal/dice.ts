import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/** Seeded chance: the same seed gives the same throws everywhere. */
export interface Dice {
  /** True with this chance, 0 to 1. */
  readonly falls: (chance: number) => boolean;
  /** A number from 0 to 1, 1 excluded. */
  readonly number: () => number;
  /** One of them, each as likely. `undefined` for none at all. */
  readonly oneOf: <T>(things: readonly T[]) => T | undefined;
  /** A place in these shares, each as likely as its share of the sum; -1 where all are 0. */
  readonly weighted: (shares: readonly number[]) => number;
}

/** Dice for a whole number as seed; seeds in a row give throws that have nothing in common. */
export function diceOf(seed: number): Dice {
  const generator = mersenne(seed);
  const number = () => uniformFloat64(generator);
  return {
    number,
    falls: (chance) => number() < chance,
    oneOf: (things) => things[Math.floor(number() * things.length)],
    weighted: (shares) => {
      let left = number() * shares.reduce((sum, share) => sum + share, 0);
      let last = -1;
      for (const [at, share] of shares.entries()) {
        if (share <= 0) continue;
        last = at;
        left -= share;
        if (left < 0) return at;
      }
      return last;
    },
  };
}
