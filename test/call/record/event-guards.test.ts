import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eventProblem, isKnown, isTime } from '../../../src/call/record/event-guards.js';
import { anyEvent, ONE_OF_EACH } from '../../files/sample.js';

test.each(ONE_OF_EACH)('finds nothing wrong with $type', (event) => {
  expect(eventProblem(event)).toBeUndefined();
  expect(isKnown(event)).toBe(true);
});

test('finds nothing wrong with any event after a trip through JSON', () => {
  fc.assert(fc.property(anyEvent, (event) => eventProblem(JSON.parse(JSON.stringify(event))) === undefined));
});

const NEEDED = ONE_OF_EACH.flatMap((event) =>
  Object.keys(event)
    .filter((field) => field !== 'type' && field !== 'paste')
    .map((field) => ({ type: event.type, field, event })),
);

test.each(NEEDED)('$type needs $field, and the sentence names both', ({ type, field, event }) => {
  const without = Object.fromEntries(Object.entries(event).filter(([name]) => name !== field));
  for (const broken of [without, { ...event, [field]: { a: 1 } }]) {
    const problem = eventProblem(broken);
    expect(problem?.with).toMatchObject(field === 'at' ? { type } : { type, field });
    expect(problem?.id).toMatch(/^files\.event-needs-/);
  }
});

test.each([
  ['origin', { ...ONE_OF_EACH[0], origin: 'guessed' }, 'said, agreed, pasted, read'],
  ['took', { ...ONE_OF_EACH[5], took: 'perhaps' }, 'yes, no, cant-tell'],
  ['picture', { ...ONE_OF_EACH[5], picture: 'cant-tell' }, 'yes, no'],
  ['outcome', { ...ONE_OF_EACH[8], outcome: 'gone' }, 'put-right, left'],
  ['how', { ...ONE_OF_EACH[10], how: 'asleep' }, 'picture-back, visit, stopped, out-of-scope'],
])('lists the choices of %s', (field, event, choices) => {
  expect(eventProblem(event)).toMatchObject({ id: 'files.event-needs-one-of', with: { field, choices } });
});

test('takes a list of texts for an answer, but no other list and no number without end', () => {
  const answered = ONE_OF_EACH[0];
  expect(eventProblem({ ...answered, answer: ['a', 'b'] })).toBeUndefined();
  for (const answer of [[1], [null], Number.NaN, Number.POSITIVE_INFINITY, undefined])
    expect(eventProblem({ ...answered, answer })?.id).toBe('files.event-needs-answer');
});

test('refuses a paste that is no text', () => {
  expect(eventProblem({ ...ONE_OF_EACH[0], paste: 7 })?.id).toBe('files.event-optional-text');
});

test.each([[null], [7], ['noted'], [[]]])('%s is no event', (value) => {
  expect(eventProblem(value)?.id).toBe('files.event-not-object');
});

test.each(['constructor', '__proto__', 'toString', 'later'])('%s is a kind that it does not know', (type) => {
  const event = { at: '2026-11-25T08:31:00Z', type };
  expect(isKnown(event)).toBe(false);
  expect(eventProblem(event)).toBeUndefined();
});

// RFC 3339, section 5.8: the first example is in UTC; the others have an offset or a leap second, which a
// record does not hold.
test.each([
  ['1985-04-12T23:20:50.52Z', true],
  ['1996-12-19T16:39:57-08:00', false],
  ['1990-12-31T23:59:60Z', false],
  ['1937-01-01T12:00:27.87+00:20', false],
  ['2026-02-29T00:00:00Z', false],
  ['2028-02-29T00:00:00Z', true],
  ['2026-11-25T24:00:00Z', false],
  ['2026-11-25', false],
  [1764059400000, false],
])('%s as a time: %s', (value, sound) => {
  expect(isTime(value)).toBe(sound);
});
