import type { Sentence } from '../../messages/say.js';
import { type CallHeader, RECORD_FORMAT } from '../events.js';
import { isTime } from './event-guards.js';
import { isVersion } from './version.js';

const text = (value: unknown): boolean => typeof value === 'string' && value !== '';

/** What the first line of a record has to carry, besides `record`. */
const NEEDED: readonly (readonly [field: string, sound: (value: unknown) => boolean])[] = [
  ['id', text],
  ['opened', isTime],
  ['whydark', isVersion],
  ['rules.version', isVersion],
  ['rules.digest', (value) => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value)],
  ['role', (value) => value === 'desk' || value === 'site'],
];

/** The first thing wrong with a header, to be filled further with `path`; undefined when sound. */
export function headerProblem(header: unknown): Sentence | undefined {
  const found = member(header, 'record');
  if (typeof found !== 'number' || !Number.isInteger(found)) return { id: 'files.record-no-header' };
  if (found !== RECORD_FORMAT)
    return { id: 'files.record-other-format', with: { found, known: RECORD_FORMAT } };
  for (const [field, sound] of NEEDED) {
    const value = field.split('.').reduce(member, header);
    if (!sound(value)) return { id: 'files.header-needs', with: { field } };
  }
  return undefined;
}

/** Is this the first line of a record of our format? */
export function isHeader(header: unknown): header is CallHeader {
  return headerProblem(header) === undefined;
}

function member(value: unknown, name: string): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, name)) return undefined;
  return (value as Readonly<Record<string, unknown>>)[name];
}
