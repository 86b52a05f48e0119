import { nearest } from '../../rulebase/did-you-mean.js';
import { error, type RuleFault } from '../../rulebase/fault.js';
import type { Cause } from '../../rulebase/records.js';
import { articleFile, type Place } from '../place.js';
import type { Known } from './found.js';

/** A file where nothing belongs, an article of no cause, and a how-to that bears the name of a cause. */
export function strayFaults(
  file: string,
  place: Place | undefined,
  causes: readonly Cause[],
  known: Known,
): readonly RuleFault[] {
  const path = `knowledge/${file}`;
  if (place === undefined) return [error(path, '', { id: 'article.no-place' })];
  const same = causes.find(({ id }) => id === place.id);
  if (place.kind === 'how-to' && same)
    return [error(path, '', { id: 'article.name-taken', with: { id: place.id } })];
  if (place.kind !== 'cause' || known.causes.has(file)) return [];
  const meant = same ? articleFile(same) : nearest(file, known.causes.keys());
  return [
    meant === undefined
      ? error(path, '', { id: 'article.no-such-cause', with: { id: place.id, stage: place.stage } })
      : error(path, '', {
          id: 'article.no-such-cause-near',
          with: { id: place.id, nearest: `knowledge/${meant}` },
        }),
  ];
}
