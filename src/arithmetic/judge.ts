import { type Between, exactly } from '../values/between.js';

/** What a sum over uncertain inputs can say; an estimate is never more than this. */
export type Verdict = 'fine' | 'doubtful' | 'impossible';

/** A verdict, and the input that would decide it where it is doubtful. */
export interface Judged<K extends string> {
  readonly verdict: Verdict;
  readonly decides?: K;
}

type Box<K extends string> = Readonly<Record<K, Between>>;
type Spare<K extends string> = (point: Readonly<Record<K, number>>) => number;

/**
 * Fine if something is to spare over the whole range of every input, impossible if nowhere, else
 * doubtful. `spare` (negative: not enough) must rise or fall all the way along each input, so that its
 * ends lie at the corners. The deciding input is the uncertain one whose two ends leave the least doubt.
 */
export function judge<K extends string>(inputs: Box<K>, spare: Spare<K>): Judged<K> {
  const verdict = verdictOver(ends(inputs, spare));
  if (verdict !== 'doubtful') return { verdict };
  const weighed = keysOf(inputs)
    .filter((key) => inputs[key].low < inputs[key].high)
    .map((key) => ({ key, ...doubtLeft(inputs, spare, key) }))
    .sort((one, other) => one.open - other.open || one.width - other.width || (one.key < other.key ? -1 : 1));
  const [best] = weighed;
  return best === undefined ? { verdict } : { verdict, decides: best.key };
}

/** The worst of several verdicts; the input that decides is that of the first doubtful one. */
export function worstOf<K extends string>(parts: readonly Judged<K>[]): Judged<K> {
  const worst =
    parts.find(({ verdict }) => verdict === 'impossible') ??
    parts.find(({ verdict }) => verdict === 'doubtful');
  return worst ?? { verdict: 'fine' };
}

interface Ends {
  readonly least: number;
  readonly most: number;
}

function verdictOver({ least, most }: Ends): Verdict {
  if (least >= 0) return 'fine';
  return most < 0 ? 'impossible' : 'doubtful';
}

function doubtLeft<K extends string>(inputs: Box<K>, spare: Spare<K>, key: K) {
  const sides = [inputs[key].low, inputs[key].high].map((end) =>
    ends({ ...inputs, [key]: exactly(end) }, spare),
  );
  return {
    open: sides.filter((side) => verdictOver(side) === 'doubtful').length,
    width: sides.reduce((sum, { least, most }) => sum + most - least, 0),
  };
}

function ends<K extends string>(inputs: Box<K>, spare: Spare<K>): Ends {
  const values = corners(inputs).map(spare);
  return { least: Math.min(...values), most: Math.max(...values) };
}

function corners<K extends string>(inputs: Box<K>): readonly Readonly<Record<K, number>>[] {
  const points = keysOf(inputs).reduce<readonly Readonly<Record<string, number>>[]>(
    (so, key) => {
      const { low, high } = inputs[key];
      const sides = low === high ? [low] : [low, high];
      return so.flatMap((point) => sides.map((side) => ({ ...point, [key]: side })));
    },
    [{}],
  );
  return points as readonly Readonly<Record<K, number>>[];
}

function keysOf<K extends string>(inputs: Box<K>): readonly K[] {
  return Object.keys(inputs) as K[];
}
