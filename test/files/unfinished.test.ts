import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { unfinished } from '../../src/files/unfinished.js';
import { faultFrom, HEADER, lineOf, note, WHYDARK } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
const closed = { at: '2026-11-25T09:00:00Z', type: 'closed', how: 'visit' };

function keep(name: string, opened: string, ...events: readonly unknown[]): void {
  writeFileSync(join(folder, name), [{ ...HEADER, opened }, ...events].map(lineOf).join(''));
}

test('lists the calls that nobody closed, the one opened last first, and reports what it cannot read', () => {
  keep('a.jsonl', '2026-11-23T10:00:00Z', note('a', 1), note('b', 2));
  keep('b.jsonl', '2026-11-25T10:00:00.5Z');
  keep('c.jsonl', '2026-11-24T10:00:00Z', note('a'), closed);
  keep('d.jsonl', '2026-11-24T10:00:00Z', note('a'));
  keep('e.jsonl', '2026-11-25T10:00:00Z');
  writeFileSync(
    join(folder, 'torn.jsonl'),
    lineOf({ ...HEADER, opened: '2026-11-20T10:00:00Z' }) + lineOf(closed).trim(),
  );
  writeFileSync(join(folder, 'empty.jsonl'), '');
  mkdirSync(join(folder, 'folder.jsonl'));
  writeFileSync(join(folder, 'b.jsonl.lock'), '{}');
  writeFileSync(join(folder, 'notes.txt'), 'not a record');
  const { calls, unreadable } = unfinished(folder, WHYDARK);
  expect(calls.map((call) => call.path)).toEqual(
    ['b', 'e', 'd', 'a', 'torn'].map((name) => join(folder, `${name}.jsonl`)),
  );
  expect(calls.map((call) => call.events)).toEqual([0, 0, 1, 2, 0]);
  expect(calls[0]?.last).toBe('2026-11-25T10:00:00.5Z');
  expect(calls[3]?.last).toBe('2026-11-25T08:31:02Z');
  expect(unreadable).toMatchObject([
    { path: join(folder, 'empty.jsonl'), sentence: { id: 'files.record-no-header' } },
    { path: join(folder, 'folder.jsonl'), sentence: { id: 'files.is-folder' } },
  ]);
});

test('finds none in a folder that is not there, and says so of one that is a file', () => {
  expect(unfinished(join(folder, 'none'), WHYDARK)).toEqual({ calls: [], unreadable: [] });
  writeFileSync(join(folder, 'file'), '');
  expect(faultFrom(() => unfinished(join(folder, 'file'), WHYDARK)).sentence.id).toBe('files.not-folder');
});
