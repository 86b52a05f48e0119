import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { createRecord, readRecord, resumeRecord } from '../../src/files/record.js';
import { callsFolder, makeCallsFolder } from '../../src/files/state-folder.js';
import { unfinished } from '../../src/files/unfinished.js';
import { faultFrom, HEADER, lineOf, note, WHYDARK } from './sample.js';
import { canMount, onTinyDisk } from './tmpfs.js';

const FULL = { exit: 3, sentence: { id: 'files.full' } };
const READ_ONLY = { exit: 3, sentence: { id: 'files.read-only' } };

/** Fills the disk but for `spare` pages of 4 KiB. */
function fill(folder: string, spare: number): string {
  const file = join(folder, 'filler');
  let pages = 0;
  try {
    for (;;) writeFileSync(file, Buffer.alloc(4096), { flag: 'a', flush: pages++ < 0 });
  } catch {
    writeFileSync(file, Buffer.alloc(4096 * (Math.floor(statSync(file).size / 4096) - spare)));
  }
  return file;
}

describe.skipIf(!canMount())('on a real disk of 64 KiB (needs root on Linux, to mount it)', () => {
  test.each([0, 1, 3])(
    'a full disk with %i pages to spare leaves no torn line, and the call goes on later',
    (spare) => {
      onTinyDisk(({ folder }) => {
        const path = join(folder, 'call.jsonl');
        const writer = createRecord(path, HEADER);
        writer.append(note('kept'));
        const before = readFileSync(path, 'utf8');
        const filler = fill(folder, spare);
        const long = note('long '.repeat(4000));
        for (let tries = 0; tries < 2; tries += 1) {
          expect(faultFrom(() => writer.append(long))).toMatchObject(FULL);
          expect(readFileSync(path, 'utf8')).toBe(before);
        }
        rmSync(filler);
        writer.append(long);
        writer.close();
        expect(readRecord(path, WHYDARK)).toMatchObject({ events: [note('kept'), long] });
        expect(readFileSync(path, 'utf8')).toBe(before + lineOf(long));
      });
    },
  );

  test('a full disk begins no record and leaves neither file nor lock', () => {
    onTinyDisk(({ folder }) => {
      fill(folder, 0);
      expect(faultFrom(() => createRecord(join(folder, 'call.jsonl'), HEADER))).toMatchObject(FULL);
      expect(readdirSync(folder)).toEqual(['filler']);
    });
  });

  test('a disk with room for the lock alone begins no record either', () => {
    onTinyDisk(({ folder }) => {
      fill(folder, 1);
      expect(faultFrom(() => createRecord(join(folder, 'call.jsonl'), HEADER))).toMatchObject(FULL);
      expect(readdirSync(folder)).toEqual(['filler']);
    });
  });

  test('a full disk can be read still', () => {
    onTinyDisk(({ folder }) => {
      const path = join(folder, 'call.jsonl');
      createRecord(path, HEADER).close();
      fill(folder, 0);
      expect(faultFrom(() => resumeRecord(path, WHYDARK))).toMatchObject(FULL);
      expect(readRecord(path, WHYDARK).header).toEqual(HEADER);
      expect(readdirSync(folder).sort()).toEqual(['call.jsonl', 'filler']);
    });
  });

  test('a home that can only be read is a fault of the machine, and its calls can be read', () => {
    onTinyDisk(({ folder, makeReadOnly }) => {
      const calls = callsFolder({}, folder);
      makeCallsFolder(calls);
      const path = join(calls, 'call.jsonl');
      createRecord(path, HEADER).close();
      makeReadOnly();
      expect(faultFrom(() => createRecord(join(calls, 'next.jsonl'), HEADER))).toMatchObject(READ_ONLY);
      expect(faultFrom(() => resumeRecord(path, WHYDARK))).toMatchObject(READ_ONLY);
      expect(faultFrom(() => makeCallsFolder(join(calls, 'deeper')))).toMatchObject(READ_ONLY);
      expect(() => makeCallsFolder(calls)).not.toThrow();
      expect(unfinished(calls, WHYDARK).calls).toMatchObject([{ path, header: HEADER }]);
    });
  });
});
