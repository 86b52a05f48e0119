import type { Held } from './hold.js';

/** How a policy did over many calls. */
export interface Row {
  readonly policy: string;
  readonly calls: number;
  readonly minutes: number;
  /** Standard error of the mean minutes. */
  readonly error: number;
  /** Questions after the opening, median over the calls where a remedy brought the picture back. */
  readonly questions: number;
  readonly remedies: number;
  readonly trips: number;
  /** In per cent of the calls. */
  readonly visits: number;
  readonly found: number;
}

/** One row a policy, in the order in which the policies come. */
export function rowsOf(held: readonly Held[]): readonly Row[] {
  const byPolicy = new Map<string, Held[]>();
  for (const one of held) {
    const list = byPolicy.get(one.policy) ?? [];
    byPolicy.set(one.policy, list);
    list.push(one);
  }
  return [...byPolicy].map(([policy, own]) => ({
    ...{ policy, calls: own.length },
    minutes: mean(own.map(({ minutes }) => minutes)),
    error: standardError(own.map(({ minutes }) => minutes)),
    questions: median(own.filter(({ isVisit }) => !isVisit).map(({ questions }) => questions)),
    remedies: mean(own.map(({ remedies }) => remedies)),
    trips: mean(own.map(({ trips }) => trips)),
    visits: 100 * mean(own.map(({ isVisit }) => Number(isVisit))),
    found: 100 * mean(own.map(({ isFound }) => Number(isFound))),
  }));
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);
}

function standardError(numbers: readonly number[]): number {
  const middle = mean(numbers);
  return Math.sqrt(mean(numbers.map((one) => (one - middle) ** 2)) / Math.max(1, numbers.length));
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  return ((low ?? 0) + (high ?? 0)) / 2;
}
