import { ORIGINS } from '../../answers/answer.js';
import { printable } from '../../messages/printable.js';
import type { MessageId, Sentence } from '../../messages/say.js';
import { isDay } from '../../values/calendar.js';
import type { CallEvent } from '../events.js';

type Kind = CallEvent['type'];
type Of<K extends Kind> = Extract<CallEvent, { type: K }>;
type Field = 'text' | 'optional-text' | 'answer' | 'pasted-answers' | readonly string[];

/** Every member of a closed set: the compiler refuses a missing and a foreign one. */
function oneOf<T extends string>(members: Readonly<Record<T, true>>): readonly string[] {
  return Object.keys(members);
}

/** What each kind of event has to carry, besides `at` and `type`. */
const SHAPES: { readonly [K in Kind]: Readonly<Record<Exclude<keyof Of<K>, 'at' | 'type'>, Field>> } = {
  answered: { question: 'text', answer: 'answer', origin: ORIGINS, paste: 'optional-text' },
  pasted: {
    paste: 'text',
    origin: ['pasted', 'read'],
    text: 'text',
    answers: 'pasted-answers',
    note: 'optional-text',
  },
  agreed: { question: 'text' },
  undone: {},
  noted: { text: 'text' },
  tried: {
    remedy: 'text',
    took: oneOf<Of<'tried'>['took']>({ yes: true, no: true, 'cant-tell': true }),
    picture: oneOf<Of<'tried'>['picture']>({ yes: true, no: true }),
  },
  'passed-over': { step: 'text' },
  kept: { contradiction: 'text' },
  'tester-dealt': {
    fault: 'text',
    outcome: oneOf<Of<'tester-dealt'>['outcome']>({ 'put-right': true, left: true }),
  },
  moved: { place: 'text' },
  closed: {
    how: oneOf<Of<'closed'>['how']>({
      'picture-back': true,
      visit: true,
      stopped: true,
      'out-of-scope': true,
    }),
  },
};

/** One line of a record that is some event: of a kind that we know, or of one that we do not. */
export interface AnyEvent {
  readonly at: string;
  readonly type: string;
  readonly [field: string]: unknown;
}

/** Is this event of a kind that this release knows? Fields it does not know are allowed. */
export function isKnown(event: object & { readonly type: string }): event is CallEvent {
  return Object.hasOwn(SHAPES, event.type);
}

/** The first thing wrong with an event, to be filled further with `path` and `line`; undefined when sound. */
export function eventProblem(event: unknown): Sentence | undefined {
  if (typeof event !== 'object' || event === null || Array.isArray(event))
    return { id: 'files.event-not-object' };
  const fields = new Map<string, unknown>(Object.entries(event));
  const type = fields.get('type');
  if (typeof type !== 'string') return { id: 'files.event-needs-type' };
  const shown = printable(type, 40);
  if (!isTime(fields.get('at'))) return { id: 'files.event-needs-time', with: { type: shown } };
  if (!Object.hasOwn(SHAPES, type)) return undefined;
  for (const [field, needed] of Object.entries<Field>(SHAPES[type as Kind])) {
    const id = fieldProblem(fields.get(field), needed);
    if (id === undefined) continue;
    const choices = typeof needed === 'string' ? '' : needed.join(', ');
    return { id, with: { type, field, choices } };
  }
  return undefined;
}

/** A moment of ISO 8601 in UTC, to the second or finer. */
const MOMENT = /^(\d{4})-(\d\d)-(\d\d)T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:\.\d{1,9})?Z$/;

/** Is this a moment of ISO 8601 in UTC, to the second or finer? */
export function isTime(value: unknown): value is string {
  const [, year, month, day] = (typeof value === 'string' && MOMENT.exec(value)) || [];
  return year !== undefined && isDay({ year: Number(year), month: Number(month), day: Number(day) });
}

function fieldProblem(value: unknown, needed: Field): MessageId | undefined {
  if (needed === 'text') return typeof value === 'string' ? undefined : 'files.event-needs-text';
  if (needed === 'optional-text')
    return value === undefined || typeof value === 'string' ? undefined : 'files.event-optional-text';
  if (needed === 'pasted-answers')
    return Array.isArray(value) && value.every(isPastedAnswer) ? undefined : 'files.event-needs-pasted';
  if (needed === 'answer') return isAnswer(value) ? undefined : 'files.event-needs-answer';
  return typeof value === 'string' && needed.includes(value) ? undefined : 'files.event-needs-one-of';
}

function isPastedAnswer(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const fields = new Map<string, unknown>(Object.entries(value));
  return (
    typeof fields.get('question') === 'string' &&
    isAnswer(fields.get('answer')) &&
    Number.isSafeInteger(fields.get('line'))
  );
}

function isAnswer(value: unknown): boolean {
  if (Array.isArray(value)) return value.every((item) => typeof item === 'string');
  if (typeof value === 'number') return Number.isFinite(value);
  return value === null || typeof value === 'string' || typeof value === 'boolean';
}
