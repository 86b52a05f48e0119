import type { Route } from '../seen.js';
import { address4, after, maskOf, sides } from './words.js';

/** Where a route leads, taken apart from how it gets there. */
export type Destination = Pick<Route, 'to' | 'mask'>;

/** `default`, `172.23.40.0/24` or one address alone. */
export function destinationOf(word: string | undefined): Destination | undefined {
  if (word === undefined) return undefined;
  const [address, length] = sides(word === 'default' ? '0.0.0.0/0' : word);
  const to = address4(address);
  const mask = maskOf(length ?? '32');
  return to === undefined || mask === undefined ? undefined : { to, mask };
}

/** The route that `via`, `dev` and `metric` tell of a destination. */
export function routeOf(destination: Destination, words: readonly string[], line: number): Route {
  const via = address4(after(words, 'via'));
  const adapter = after(words, 'dev');
  const metric = Number(after(words, 'metric') ?? Number.NaN);
  return {
    ...destination,
    ...(via !== undefined && { via }),
    ...(adapter !== undefined && { adapter }),
    ...(Number.isSafeInteger(metric) && { metric }),
    line,
  };
}
