import type { LabCall } from './lab-call.js';

export interface Row {
  readonly fault: string;
  readonly title: string;
  readonly noisy: boolean;
  readonly isPair: boolean;
  readonly isHeldBack: boolean;
  readonly call: LabCall;
  readonly seconds: number;
}

/** The right thing was mended on the call: the picture really is back, by a remedy that mends what was wrong. */
export function isMendedOnCall({ call }: Row): boolean {
  return call.isBack && call.closed === 'picture-back' && call.tried.some(({ mends }) => mends);
}

/** Mended by whoever was sent, by the visit's own list of at most six: what needs a ladder or a spare camera. */
export function isMendedByVisit({ call }: Row): boolean {
  return call.isBack && call.closed === 'visit' && call.visitTried.some(({ mends }) => mends);
}

export function isMended(row: Row): boolean {
  return isMendedOnCall(row) || isMendedByVisit(row);
}

/** The first remedy that was tried, on the call or on the visit, mends what is wrong. */
export function isFirstRight({ call }: Row): boolean {
  return (call.tried[0] ?? call.visitTried[0])?.mends === true;
}

/** One call on a line. */
export function lineOf(row: Row): string {
  const { call } = row;
  const first = call.tried[0];
  return [
    (isMendedOnCall(row) ? '+' : isMendedByVisit(row) ? 'v' : '-') + (row.noisy ? '~' : ' '),
    row.fault.padEnd(34),
    `rank ${String(first?.rank ?? '-').padStart(3)}`,
    `q ${String(call.questions).padStart(3)}`,
    `r ${String(call.tried.length).padStart(2)}`,
    `wrong ${String(call.wrong).padStart(2)}`,
    `min ${call.minutes.toFixed(1).padStart(6)}`,
    `${row.seconds.toFixed(1).padStart(5)} s`,
    isMendedOnCall(row)
      ? ''
      : `${call.closed}: ${call.leader} ${Math.round(call.probability * 100)} %, true at ${call.finalRank}`,
  ].join('  ');
}

/** One line a fault, and the shares below. */
export function tableOf(rows: readonly Row[]): string {
  return [
    'mended (+ on the call, v by the visit, - not; ~ with mistakes)  fault; rank of the true cause at the first remedy; questions; remedies; wrong ones; minutes; time here',
    ...rows.map(lineOf),
    '',
    ...summaries(rows),
  ].join('\n');
}

export function summaries(rows: readonly Row[]): readonly string[] {
  const groups: readonly (readonly [string, (row: Row) => boolean])[] = [
    ['single faults', (row) => !row.isPair && !row.noisy],
    ['pairs', (row) => row.isPair && !row.noisy],
    ['single faults, 5 % wrong and 15 % missing', (row) => !row.isPair && row.noisy],
    ['pairs, 5 % wrong and 15 % missing', (row) => row.isPair && row.noisy],
  ];
  return groups.flatMap(([name, is]) =>
    [false, true].flatMap((held) => {
      const some = rows.filter((row) => is(row) && row.isHeldBack === held);
      if (some.length === 0) return [];
      const share = (count: number): string =>
        `${count} of ${some.length} (${Math.round((100 * count) / some.length)} %)`;
      const mean = (of: (row: Row) => number): string =>
        (some.reduce((sum, row) => sum + of(row), 0) / some.length).toFixed(1);
      return [
        `${name}${held ? ', held back' : ''}: mended ${share(some.filter(isMended).length)}, ${some.filter(isMendedByVisit).length} of them by the visit, first remedy right ${share(
          some.filter(isFirstRight).length,
        )}, questions ${mean(({ call }) => call.questions)}, minutes ${mean(({ call }) => call.minutes)}, visits ${
          some.filter(({ call }) => call.visits > 0).length
        }, gates broken ${some.reduce((sum, { call }) => sum + call.gatesBroken.length, 0)}`,
      ];
    }),
  );
}

/**
 * The share of single faults, clean, whose first remedy was right, if each cause came as often as the rule base judges;
 * faults of one cause share its frequency. 0 to 1.
 */
export function firstRightByFrequency(
  rows: readonly Row[],
  causes: readonly { readonly id: string; readonly prior: number }[],
): number {
  const singles = rows.filter(({ isPair, noisy }) => !isPair && !noisy);
  const causeOf = ({ call }: Row): string => call.causes[0] ?? '';
  const weightOf = (row: Row): number =>
    (causes.find(({ id }) => id === causeOf(row))?.prior ?? 0) /
    singles.filter((one) => causeOf(one) === causeOf(row)).length;
  const sum = (some: readonly Row[]): number => some.reduce((all, row) => all + weightOf(row), 0);
  return sum(singles.filter(isFirstRight)) / sum(singles);
}
