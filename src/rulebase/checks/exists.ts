import type { MessageId, Sentence } from '../../messages/say.js';
import { nearest } from '../did-you-mean.js';
import { error, type RuleFault } from '../fault.js';
import { shown } from '../shown.js';

/** How many names are still worth listing in one sentence. */
const LISTED = 20;

/** No fault if the name is known; else the nearest known name, or the given sentence with what is known. */
export function mustExist(
  file: string,
  pointer: string,
  name: string,
  known: ReadonlySet<string> | ReadonlyMap<string, unknown>,
  otherwise: MessageId,
): readonly RuleFault[] {
  return known.has(name) ? [] : [error(file, pointer, unknownName(name, [...known.keys()], otherwise))];
}

export function unknownName(name: string, known: readonly string[], otherwise: MessageId): Sentence {
  const near = nearest(name, known);
  return near === undefined
    ? { id: otherwise, with: { found: shown(name), known: listed(known) } }
    : { id: 'rules.unknown-name-near', with: { found: shown(name), near } };
}

export function listed(names: readonly string[]): string {
  const first = names.slice(0, LISTED).join(', ');
  return names.length > LISTED ? `${first}, ...` : first;
}
