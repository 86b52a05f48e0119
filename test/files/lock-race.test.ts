import { readFileSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { lock } from '../../src/files/lock.js';
import type * as LockMark from '../../src/files/lock-mark.js';
import { thisProcess } from '../../src/files/process-marks.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

/** Done once, right after the mark was read for the first time; and how many marks are let go of before that. */
const meanwhile = vi.hoisted(() => ({ happens: () => {}, letGo: 0 }));

vi.mock('../../src/files/lock-mark.js', async (original) => {
  const marks = await original<typeof LockMark>();
  return {
    ...marks,
    makeMark: (mark: string, words: string) => {
      const gone = meanwhile.letGo > 0;
      if (gone) meanwhile.letGo -= 1;
      return gone ? false : marks.makeMark(mark, words);
    },
    settledMark: (mark: string) => {
      const words = marks.settledMark(mark);
      meanwhile.happens();
      meanwhile.happens = () => {};
      return words;
    },
  };
});

test('does not remove the mark of one who took over first, between the look and the taking', () => {
  const path = join(temporaryFolder(), 'call.jsonl');
  const dead = { pid: 2 ** 22 + 1, started: '', host: hostname() };
  writeFileSync(`${path}.lock`, JSON.stringify(dead));
  const winner = JSON.stringify({ ...thisProcess(), pid: process.ppid, started: '' });
  meanwhile.happens = () => writeFileSync(`${path}.lock`, winner);
  expect(faultFrom(() => lock(path))).toMatchObject({
    sentence: { id: 'files.record-busy', with: { pid: process.ppid } },
  });
  expect(readFileSync(`${path}.lock`, 'utf8')).toBe(winner);
});

test.each([1, 8])('takes a record that others let go of between the try and the look, %i times', (times) => {
  const path = join(temporaryFolder(), 'call.jsonl');
  meanwhile.letGo = times;
  const release = lock(path);
  expect(readFileSync(`${path}.lock`, 'utf8')).toBe(JSON.stringify(thisProcess()));
  release();
});
