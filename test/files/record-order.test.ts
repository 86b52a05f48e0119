import type * as NodeFs from 'node:fs';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { createRecord } from '../../src/files/record.js';
import { faultFrom, HEADER, note } from './sample.js';
import { temporaryFolder } from './temporary.js';

/** What the record asked the file system for, in order, and what the disk shall answer next. */
const disk = vi.hoisted(() => ({
  asked: [] as string[],
  fail: undefined as string | undefined,
  code: 'EIO',
  short: 0,
}));

vi.mock('node:fs', async (original) => {
  const fs = await original<typeof NodeFs>();
  const ask = (name: string) => {
    disk.asked.push(name);
    if (disk.fail === name) throw Object.assign(new Error(disk.code), { code: disk.code, syscall: name });
  };
  const kind = (file: number) => (fs.fstatSync(file).isDirectory() ? 'folder' : 'file');
  return {
    ...fs,
    writeSync: (file: number, bytes: Buffer, offset = 0, length = bytes.length, at?: number) => {
      ask('write');
      const room = disk.short === 0 ? length : disk.short;
      if (disk.short !== 0) disk.fail = 'write';
      return fs.writeSync(file, bytes, offset, room, at);
    },
    fsyncSync: (file: number) => {
      ask(`fsync ${kind(file)}`);
      fs.fsyncSync(file);
    },
    ftruncateSync: (file: number, length: number) => {
      ask('cut');
      fs.ftruncateSync(file, length);
    },
  };
});

const folder = temporaryFolder();
let count = 0;

function opened() {
  const path = join(folder, `call-${++count}.jsonl`);
  const writer = createRecord(path, HEADER);
  disk.asked.length = 0;
  return { path, writer };
}

afterEach(() => {
  Object.assign(disk, { fail: undefined, code: 'EIO', short: 0 });
  disk.asked.length = 0;
});

test('has the header and the folder on the disk before a record counts as begun', () => {
  createRecord(join(folder, 'first.jsonl'), HEADER).close();
  expect(disk.asked).toEqual(['write', 'fsync file', 'fsync folder']);
});

test('writes an event in one go and has it on the disk before it counts as kept', () => {
  const { writer } = opened();
  writer.append(note('a '.repeat(100_000)));
  expect(disk.asked).toEqual(['write', 'fsync file']);
  writer.close();
});

test.each([
  ['ENOSPC', 'files.full'],
  ['EDQUOT', 'files.quota'],
  ['EIO', 'files.other'],
])('cuts back what was written when the disk says %s only at the end', (code, id) => {
  const { path, writer } = opened();
  const before = readFileSync(path, 'utf8');
  Object.assign(disk, { fail: 'fsync file', code });
  expect(faultFrom(() => writer.append(note('a')))).toMatchObject({ exit: 3, sentence: { id } });
  expect(readFileSync(path, 'utf8')).toBe(before);
  disk.fail = undefined;
  writer.append(note('a'));
  expect(readFileSync(path, 'utf8')).toBe(`${before}${JSON.stringify(note('a'))}\n`);
  writer.close();
});

test('cuts back half a line', () => {
  const { path, writer } = opened();
  const before = readFileSync(path, 'utf8');
  Object.assign(disk, { short: 11, code: 'ENOSPC' });
  expect(faultFrom(() => writer.append(note('a'))).sentence.id).toBe('files.full');
  expect(readFileSync(path, 'utf8')).toBe(before);
  expect(disk.asked).toEqual(['write', 'write', 'cut', 'fsync file']);
  writer.close();
});

test('tries again to cut before the next event when the cut failed as well', () => {
  const { path, writer } = opened();
  const before = readFileSync(path, 'utf8');
  disk.fail = 'fsync file';
  disk.code = 'ENOSPC';
  const cutFails = vi.spyOn(disk.asked, 'push').mockImplementation((...names) => {
    if (names.includes('cut')) throw Object.assign(new Error('EIO'), { code: 'EIO', syscall: 'ftruncate' });
    return 0;
  });
  expect(faultFrom(() => writer.append(note('a'))).sentence.id).toBe('files.full');
  expect(readFileSync(path, 'utf8')).not.toBe(before);
  cutFails.mockRestore();
  disk.fail = undefined;
  writer.append(note('b'));
  expect(readFileSync(path, 'utf8')).toBe(`${before}${JSON.stringify(note('b'))}\n`);
  writer.close();
});
