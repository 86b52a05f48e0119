/** Numbers by chance that are the same for the same seed. */
export interface Chance {
  /** A whole number from 0 to `below` - 1. */
  upTo(below: number): number;
  /** Whether something with this share of 100 happens. */
  happens(percent: number): boolean;
  pick<T>(from: readonly T[]): T;
}

/** A 32-bit counter, mixed by the finaliser of MurmurHash3 (Appleby, 2011): even enough for drawing networks. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
  const upTo = (below: number): number => Math.floor((next() / 2 ** 32) * below);
  return {
    upTo,
    happens: (percent) => upTo(100) < percent,
    pick: (from) => {
      const one = from[upTo(from.length)];
      if (one === undefined) throw new Error('nothing to pick from');
      return one;
    },
  };
}
