import type { MessageId, Sentence } from '../../messages/say.js';
import type { Parts } from './follow.js';
import { deviceOf, type Site } from './site.js';
import { PARTS, type Walk, walk } from './walk.js';

/** Which of two devices can call the other. */
export type Ways = 'both' | 'only-first' | 'only-second' | 'neither';

/** A walk each way. `oneWay`: one of the two can call the other and is not called back. */
export interface BothWays {
  readonly first: Walk;
  readonly second: Walk;
  readonly ways: Ways;
  readonly oneWay: boolean;
  readonly lines: readonly Sentence[];
}

const WORDS = {
  both: 'walk.both-ways',
  'only-first': 'walk.one-way',
  'only-second': 'walk.one-way',
  neither: 'walk.neither-way',
} as const satisfies Record<Ways, MessageId>;

/** Walks from the first device to the second and from the second to the first: the two may differ. */
export function bothWays(site: Site, first: string, second: string, parts: Parts = PARTS): BothWays {
  const one = walk(site, first, second, parts);
  const other = walk(site, second, first, parts);
  const ways = waysOf(one.outcome === 'reaches', other.outcome === 'reaches');
  const [caller, called] = ways === 'only-second' ? [second, first] : [first, second];
  const said = { from: deviceOf(site, caller).name, to: deviceOf(site, called).name };
  return {
    first: one,
    second: other,
    ways,
    oneWay: ways === 'only-first' || ways === 'only-second',
    lines: [...one.lines, ...other.lines, { id: WORDS[ways], with: said }],
  };
}

function waysOf(isFirst: boolean, isSecond: boolean): Ways {
  if (isFirst) return isSecond ? 'both' : 'only-first';
  return isSecond ? 'only-second' : 'neither';
}
