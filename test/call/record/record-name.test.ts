import { expect, test } from 'vitest';
import { recordName } from '../../../src/call/record/record-name.js';

test('names a record by date, time and id, so that names sort by time', () => {
  expect(recordName({ opened: '2026-11-25T08:30:07.250Z', id: 'harbour-7f3a' })).toBe(
    '2026-11-25-083007-harbour-7f3a.jsonl',
  );
});

test.each(['../up', 'a/b', '', '.hidden', 'a b', 'x'.repeat(65)])(
  'makes no file name of the id "%s"',
  (id) => {
    expect(() => recordName({ opened: '2026-11-25T08:30:07Z', id })).toThrow('not an id');
  },
);
